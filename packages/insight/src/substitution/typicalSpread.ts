import { factsFor, symbols } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { screening } from '@tiegel/screening';

/**
 * How much quantities differ from alloy to alloy: the distance between the quartiles over the
 * published alloys, by id in the unit of each; null where it is 0 or fewer than ten alloys have a
 * value. Quartiles, since Ω and Λ have a few huge values that a standard deviation would follow.
 * @throws ProblemError quantity/unknown
 */
export function typicalSpread(
  ids: readonly string[],
  conditions: Readonly<Record<string, number>> = {},
): Record<string, number | null> {
  const valuesAt = screening(factsFor(symbols), ids, conditions);
  const values = publishedAlloys.map(({ composition }) => valuesAt(composition));
  return Object.fromEntries(ids.map((id) => [id, quartileDistance(values.map((of) => of[id]!))]));
}

function quartileDistance(values: readonly (number | null)[]): number | null {
  const known = values.filter((value) => value !== null).sort((a, b) => a - b);
  if (known.length < 10) return null;
  const at = (share: number): number => known[Math.floor(share * (known.length - 1))]!;
  const distance = at(0.75) - at(0.25);
  return distance > 0 ? distance : null;
}
