import type { Amounts } from '../alloy/amounts.ts';
import type { Likely } from '../alloy/likelyInWords.ts';
import type { Neighbour } from '../alloy/neighbour.ts';
import type { PhaseEstimate } from '../alloy/phase.ts';
import type { Reported } from '../alloy/reportsInWords.ts';
import type { TypicalRanges } from '../alloy/typicalRanges.ts';
import type { CriterionRecord } from '../evidence/criterionRecord.ts';
import type { DifferenceGrade } from './differenceAmong.ts';

/** More alloys cannot be read side by side. */
export const mostCompared = 6;

/** What a line says of one alloy. */
export interface ComparisonCell {
  text: string;
  value: number | null;
  /** of a limit */
  met?: boolean;
}

/** One line of a comparison: what is compared, and each alloy's text and, if it is one, number. */
export interface ComparisonRow {
  id: string;
  name: string;
  symbol: string;
  unit: string;
  cells: ComparisonCell[];
  /** null where nobody can say */
  difference: DifferenceGrade | null;
  /** numbers are marked as highest and lowest */
  numeric: boolean;
}

export interface ComparisonGroup {
  head: string;
  rows: ComparisonRow[];
}

/** An alloy as it is compared: what it is, and what is said of it; null while that is not known. */
export interface ComparedAlloy {
  composition: Amounts;
  explanation: Said | null;
}

/** Of an explanation, or whatever says the same. */
interface Said {
  criteria: Readonly<Record<string, boolean | null>>;
  phase: Likely & Pick<PhaseEstimate, 'singleSolution'>;
  demixing: { temperature: number | null } | null;
  ordering: { temperature: number | null } | null;
  compounds: { hullDistance: number } | null;
  nearest: readonly (Reported & Pick<Neighbour, 'distance'>)[];
}

/** What is compared is told as it is printed: the unit with its currency, numbers as their reader writes them. */
export interface ComparedQuantity {
  id: string;
  name: string;
  symbol: string;
  unit: string;
}

/** What the lines are made of. */
export interface Comparison<Alloy extends ComparedAlloy, Quantity extends ComparedQuantity> {
  alloys: readonly Alloy[];
  quantities: readonly Quantity[];
  /** the scale of each quantity; null while it is not known */
  typical: TypicalRanges | null;
  criteria: readonly Pick<
    CriterionRecord,
    'id' | 'name' | 'positiveClass' | 'predicts' | 'predictsSecondPhase' | 'balancedAccuracy'
  >[];
  /** what a search asked, where it is compared, too */
  asked?: readonly ComparisonGroup[];
  /** a number for reading, what stands for none */
  written: (value: number | null, decimals: number) => string;
  cellOf: (quantity: Quantity, alloy: Alloy) => ComparisonCell;
  /** why a rule gives no verdict on an alloy */
  silence: (criterion: string, alloy: Alloy) => string;
}
