import { boundsOf, type Interval, type Program, type Region } from '@tiegel/screening';
import type { Grid } from '../grid/grid.ts';

/**
 * For each output of a program an interval that holds all its values on a grid, and whether there
 * may be points without a value. For a grid that has no size of system left, values are missing always.
 */
export function outputBounds(grid: Grid, program: Program): Interval[] {
  const overSizes = regionsOf(grid).map((region) => boundsOf(program, region).map((one) => ({ ...one })));
  return program.outputs.map((_, output) => overSizes.map((bounds) => bounds[output]!).reduce(hull, nothing));
}

/** The grid as regions: one, or for the equimolar grid one for each number of elements, since the whole differs. */
function regionsOf({ symbols, required, lowest, highest, total, components }: Grid): Region[] {
  const elements = symbols
    .map((_, index) => ({ index, min: lowest[index]!, max: highest[index]!, optional: !required[index] }))
    .filter(({ min, max }) => min <= max);
  const sizes = components.max - components.min + 1;
  if (total !== null) return sizes > 0 ? [{ total, elements, components }] : [];
  return Array.from({ length: sizes }, (_, more) => {
    const size = components.min + more;
    return { total: size, elements, components: { min: size, max: size } };
  });
}

/** The interval of no region. */
const nothing: Interval = {
  low: Number.POSITIVE_INFINITY,
  high: Number.NEGATIVE_INFINITY,
  missing: 'always',
};

function hull(one: Interval, other: Interval): Interval {
  if (one === nothing) return other;
  const missing = one.missing === other.missing ? one.missing : 'sometimes';
  return { low: Math.min(one.low, other.low), high: Math.max(one.high, other.high), missing };
}
