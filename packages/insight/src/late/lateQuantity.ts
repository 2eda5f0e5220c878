import type { Facts } from '@tiegel/contract';
import type { Composition, Source } from '@tiegel/screening';

/**
 * A number that is no closed formula (an eigenvalue, a linear programme, a search of a table):
 * worked out for candidates that a search has kept, never inside it. It has no bounds and no
 * sensitivities.
 */
export interface LateQuantity {
  /** Name in filters on kept candidates, columns and exports; no closed quantity has it. */
  id: string;
  /** The field's term, sentence case. */
  name: string;
  symbol: string;
  /** As printed; '' for a plain number. */
  unit: string;
  /** How it is found, in the usual notation, for people. */
  notation: string;
  /** What it tells, in plain words, one or two sentences. */
  meaning: string;
  /** Decimals that mean something in display. */
  decimals: number;
  source: Source;
  /** How far to trust it; belongs beside the value. */
  caution: string;
  /**
   * The value, in the unit above; null where data lack, or where the meaning says so.
   * @param conditions by name, in the units of the conditions of packages/screening
   * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
   */
  compute(
    composition: Composition,
    facts: Facts,
    conditions: Readonly<Record<string, number>>,
  ): number | null;
}
