import type { Expression } from '../formula/expression.ts';
import type { PartUnit } from '../units/writtenUnit.ts';

/** Where a formula was published. `checked` says how far anybody compared it with the source. */
export interface Source {
  authors: string;
  year: number | null;
  where: string;
  checked:
    | 'against the paper'
    | 'from memory'
    | 'definition'
    | 'common practice, no source'
    | 'ours, no source';
}

/**
 * A number that the tool says of a composition, defined once: value, bounds, sensitivities, fast
 * scorers, pages, exports and docs all derive from this.
 */
export interface Quantity {
  /** Name in specifications, columns and exports. */
  id: string;
  /** The field's term, sentence case. */
  name: string;
  symbol: string;
  /** As printed; '' for a plain number. 'currency/kg' stands for the price list's currency. */
  unit: string;
  /** What formulas that name it reckon with, where `unit` as printed says less: open beside a typed number, or with powers. */
  unitInFormulas?: PartUnit;
  formula: Expression;
  /** The formula in the usual notation, for people. */
  notation: string;
  /** What the quantity tells, in plain words, one or two sentences. */
  meaning: string;
  /** Values that the formula can take at all, whatever the data. */
  range: { min?: number; max?: number };
  /** Decimals that mean something in display. */
  decimals: number;
  source: Source;
  /** What to beware of when reading or limiting it. */
  caution?: string;
  /** It means nothing of alloys where another quantity, of kept candidates, is above `max`: the formula goes on all the same. */
  basis?: { quantity: string; max: number };
}
