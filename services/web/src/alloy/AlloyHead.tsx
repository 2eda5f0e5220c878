import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import type { AlloyState } from './state/alloyState.ts';

interface AlloyHeadProps {
  alloy: AlloyState;
  /** buttons and links: what can be done with the alloy */
  actions: ReactNode;
  /** its place in a search */
  children: ReactNode;
}

/** The composition, its bar, and what can be done with it. */
export function AlloyHead({ alloy, actions, children }: AlloyHeadProps) {
  const { search, composition, decimals } = alloy;
  return (
    <header className="column alloy-head">
      <p className="screen-only">
        {search ? (
          <Link href={`/searches/${search.id}`}>{search.name === '' ? 'The search' : search.name}</Link>
        ) : (
          <Link href="/alloys">Another alloy</Link>
        )}
      </p>
      <h1>
        <Shares composition={composition} decimals={decimals} />
        <span className="alloy-unit">at.%</span>
      </h1>
      <ShareBar composition={composition} labelled />
      {children}
      <div className="row screen-only alloy-actions">{actions}</div>
    </header>
  );
}
