import { extentOf } from '../../plot/extentOf.ts';
import { niceExtent } from '../../plot/niceTicks.ts';

/** What the axis of a distribution covers, and in which steps a thumb moves on it. */
export interface DragRange {
  from: number;
  to: number;
  step: number;
}

/** A thumb has about so many places. */
const places = 200;

/**
 * The range of a quantity's values and of the bounds set on it. A bound further away than the
 * values spread is left outside: its thumb stands at the edge. Null where there is no value.
 * @param decimals those that mean something in display: no step is finer
 */
export function dragRange(
  values: readonly (number | null)[],
  bounds: readonly (number | null)[],
  decimals: number,
): DragRange | null {
  const extent = extentOf(values);
  if (!extent) return null;
  const spread = extent[1] - extent[0] || 10 ** -decimals;
  const near = bounds.filter(
    (bound) => bound !== null && bound >= extent[0] - spread && bound <= extent[1] + spread,
  );
  const [from, to] = niceExtent(...extentOf([...extent, ...near])!);
  return { from, to, step: stepOf((to - from) / places, 10 ** -decimals) };
}

/** 1, 2 or 5 times a power of ten, not above `rough` unless `least` is; `least` that would leave fewer than five places does not count. */
function stepOf(rough: number, least: number): number {
  if (rough <= least && least < (rough * places) / 5) return least;
  const power = Math.floor(Math.log10(rough) + 1e-9);
  const factor = [5, 2, 1].find((one) => one * 10 ** power <= rough * (1 + 1e-9))!;
  return Number((factor * 10 ** power).toPrecision(1));
}
