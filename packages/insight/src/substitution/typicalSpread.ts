import { typicalRange } from './typicalRange.ts';

/**
 * How much quantities differ from alloy to alloy: the distance between the quartiles over the
 * published alloys (typicalRange), by id in the unit of each; null where it is 0 or not known.
 * @throws ProblemError quantity/unknown
 */
export function typicalSpread(
  ids: readonly string[],
  conditions: Readonly<Record<string, number>> = {},
): Record<string, number | null> {
  return Object.fromEntries(
    Object.entries(typicalRange(ids, conditions)).map(([id, range]) => {
      const distance = range === null ? 0 : range.high - range.low;
      return [id, distance > 0 ? distance : null];
    }),
  );
}
