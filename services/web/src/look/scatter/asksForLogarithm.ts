import { extentOf } from '../../plot/extentOf.ts';

/** How many times the greatest value must exceed the middle one. */
const farAbove = 20;
/** So many values, taken evenly, know the middle one well enough. */
const looked = 999;

/**
 * Whether values show more on a logarithmic axis: all above 0, and the greatest so far above the
 * middle one that a linear axis would press most of them into its foot.
 */
export function asksForLogarithm(values: readonly (number | null)[]): boolean {
  const [least, greatest] = extentOf(values) ?? [0, 0];
  if (least <= 0) return false;
  const step = Math.max(1, Math.floor(values.length / looked));
  const some = values.filter((value, place) => value !== null && place % step === 0) as number[];
  const middle = some.sort((a, b) => a - b)[some.length >> 1] ?? greatest;
  return greatest > farAbove * middle;
}
