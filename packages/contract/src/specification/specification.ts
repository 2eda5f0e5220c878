import type { Tally } from './tally.ts';

/** A wish for one quantity: the best is high, low, or nearest to a target. */
export type Preference = 'high' | 'low' | { target: number };

/** One entry of a ranking. The anchors (from, to or within) are there exactly when several entries are combined. */
export interface RankEntry {
  quantity: string;
  prefer: Preference;
  from?: number;
  to?: number;
  within?: number;
  weight?: number;
  shape?: number;
}

/** What is better of a quantity that is weighed against others. */
export interface FrontEntry {
  quantity: string;
  prefer: 'high' | 'low';
}

export interface Limit {
  quantity: string;
  min?: number;
  max?: number;
}

/** Amounts in at.%; `each` overrides min and max for single elements. */
export interface GridFractions {
  step: number;
  min: number;
  max: number;
  each: Record<string, { min?: number; max?: number }>;
}

/** A checked search specification with every default filled in. */
export interface SearchSpecification {
  version: 1;
  name: string;
  elements: { pool: string[]; require: string[]; forbid: string[] };
  components: { min: number; max: number };
  fractions: 'equimolar' | GridFractions;
  limits: Limit[];
  rank: RankEntry[];
  /** Own figures of merit by name, as typed; there exactly when some were given. A later one may name an earlier one. */
  lets?: Record<string, string>;
  /** Quantities whose Pareto front is kept, 2 to 4; there exactly when it was asked for. */
  front?: FrontEntry[];
  /** Limits on late quantities, applied to what is kept; there exactly when some were given. */
  keptOnly?: Limit[];
  /** Those that were set, by name, in the unit of each; there exactly when some were. All others have their defaults. */
  conditions?: Record<string, number>;
  keep: number;
  keepPerSystem: number;
  /** What is counted of the points that pass. */
  tally: Tally;
}
