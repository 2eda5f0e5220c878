import type { QuantityView } from '@tiegel/contract';
import { type ReactNode, useId } from 'react';
import type { Draft } from '../draft/draft.ts';
import type { ChangeDraft } from '../draft/useDraft.ts';
import { FrontFields } from './FrontFields.tsx';
import './further.css';
import { KeptOnlyFields } from './KeptOnlyFields.tsx';
import { TallyFields } from './TallyFields.tsx';

interface FurtherSectionProps {
  draft: Draft;
  change: ChangeDraft;
  quantities: readonly QuantityView[];
}

/** What most searches do not need: folded away until it is used. */
export function FurtherSection({ draft, change, quantities }: FurtherSectionProps) {
  return (
    <section aria-labelledby="further-head" className="ask-section">
      <h2 id="further-head">Further</h2>
      <Folded name="Limits applied to the kept ones only" used={draft.keptOnly.length > 0}>
        <KeptOnlyFields draft={draft} change={change} />
      </Folded>
      <Folded name="What is counted" used={draft.tally !== 'each'}>
        <TallyFields draft={draft} change={change} />
      </Folded>
      <Folded name="Best compromises between several aims" used={draft.front.length > 0}>
        <FrontFields draft={draft} change={change} quantities={quantities} />
      </Folded>
    </section>
  );
}

/** A part of the form that is open once it is used; closing it is left to the person. */
function Folded({ name, used, children }: { name: string; used: boolean; children: ReactNode }) {
  const id = useId();
  return (
    <details className="folded" open={used || undefined} aria-labelledby={id}>
      <summary>
        <span id={id}>{name}</span>
        {used ? <span className="folded-used"> (used)</span> : null}
      </summary>
      <div className="folded-content">{children}</div>
    </details>
  );
}
