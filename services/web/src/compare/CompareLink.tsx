import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { compareAddress } from './compareAddress.ts';
import { rememberCompared } from './compareList.ts';

interface CompareLinkProps {
  /** canonical texts, at most as many as can be compared */
  alloys: readonly string[];
  conditions: Record<string, number> | undefined;
  /** id of the search whose limits hold; null: of none */
  search: string | null;
  className?: string;
  children: ReactNode;
}

/**
 * The way to alloys side by side, which become the list that is compared: the pages of alloys go on from it, and
 * there is no second one.
 */
export function CompareLink({ alloys, conditions, search, className, children }: CompareLinkProps) {
  return (
    <Link
      className={className}
      href={compareAddress(alloys, conditions, search)}
      onClick={() => rememberCompared(alloys)}
    >
      {children}
    </Link>
  );
}
