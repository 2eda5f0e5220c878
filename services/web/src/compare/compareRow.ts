import type { Evidence, QuantityView, SearchView, TypicalRanges } from '@tiegel/contract';
import type { Difference } from './differenceOf.ts';
import type { Compared } from './useCompared.ts';

interface CompareCell {
  text: string;
  value: number | null;
  /** of a limit */
  met?: boolean;
}

/** One line of a comparison: what is compared, and each alloy's text and, if it is one, number. */
export interface CompareRow {
  id: string;
  name: string;
  symbol: string;
  unit: string;
  cells: CompareCell[];
  /** null where nobody can say */
  difference: Difference | null;
  /** numbers are marked as highest and lowest */
  numeric: boolean;
}

export interface RowGroup {
  head: string;
  rows: CompareRow[];
}

/** What the lines are made of. */
export interface Told {
  alloys: readonly Compared[];
  quantities: readonly QuantityView[];
  typical: TypicalRanges | null;
  evidence: Evidence | null;
  currency: string | undefined;
  /** whose limits and expressions are compared; null for none, and while it is not known */
  search: SearchView | null;
}
