import { factsFor, symbols } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { screening } from '@tiegel/screening';

/** The quartiles of a quantity: a quarter of the alloys lie below `low`, half below `middle`, a quarter above `high`. */
export interface TypicalRange {
  low: number;
  middle: number;
  high: number;
}

/** Fewer alloys with a value make no quartiles. */
const FEWEST = 10;

/**
 * Where the published alloys lie: the quartiles over their compositions, by id in the unit of each;
 * null where fewer than ten have a value, as for everything that needs a price. Quartiles, since Ω
 * and Λ have a few huge values that a mean and a standard deviation would follow.
 * @throws ProblemError quantity/unknown
 */
export function typicalRange(
  ids: readonly string[],
  conditions: Readonly<Record<string, number>> = {},
): Record<string, TypicalRange | null> {
  const valuesAt = screening(factsFor(symbols), ids, conditions);
  const values = publishedAlloys().map(({ composition }) => valuesAt(composition));
  return Object.fromEntries(ids.map((id) => [id, quartiles(values.map((of) => of[id]!))]));
}

function quartiles(values: readonly (number | null)[]): TypicalRange | null {
  const known = values.filter((value) => value !== null).sort((a, b) => a - b);
  if (known.length < FEWEST) return null;
  const at = (share: number): number => known[Math.floor(share * (known.length - 1))]!;
  return { low: at(0.25), middle: at(0.5), high: at(0.75) };
}
