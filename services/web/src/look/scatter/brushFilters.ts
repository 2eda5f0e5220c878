import type { Filters } from '../filters/filters.ts';
import type { Brush } from './plotState.ts';

/**
 * Filters that hold what lies in a rectangle of a scatter as well: its sides join the ranges on
 * the quantities of the axes, each range becoming the narrower of both.
 */
export function brushFilters(filters: Filters, brush: Brush, x: string, y: string): Filters {
  const sides = [
    { quantity: x, min: brush.x[0], max: brush.x[1] },
    { quantity: y, min: brush.y[0], max: brush.y[1] },
  ];
  const ranges = new Map(filters.ranges.map((range) => [range.quantity, range]));
  for (const { quantity, min, max } of sides) {
    const known = ranges.get(quantity);
    ranges.set(quantity, {
      quantity,
      min: Math.max(min, known?.min ?? Number.NEGATIVE_INFINITY),
      max: Math.min(max, known?.max ?? Number.POSITIVE_INFINITY),
    });
  }
  return { ...filters, ranges: [...ranges.values()] };
}
