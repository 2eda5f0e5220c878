import { effectivePool } from './effectivePool.ts';
import { partsOfBounds } from './partsOfBounds.ts';
import type { SearchSpecification } from './specification.ts';

/** What was ignored or rounded in a specification that is otherwise right, in whole sentences. */
export function noticesOf(specification: SearchSpecification): string[] {
  const { elements, components, fractions } = specification;
  const pool = effectivePool(elements);
  const notices: string[] = [];
  if (components.max > pool.length) {
    notices.push(`The pool has ${pool.length} elements: alloys of up to ${components.max} are not possible.`);
  }
  if (fractions === 'equimolar') return notices;
  const { step, min, max, each } = fractions;
  notices.push(...roundingNotices('All elements', { step, min, max }));
  for (const [symbol, own] of Object.entries(each)) {
    if (pool.includes(symbol)) {
      notices.push(...roundingNotices(symbol, { step, ...{ min: step, max: 100 }, ...own }));
    } else {
      notices.push(`The bounds of ${symbol} are ignored: it is not in the pool.`);
    }
  }
  return notices;
}

function roundingNotices(what: string, bounds: { step: number; min: number; max: number }): string[] {
  const parts = partsOfBounds(bounds);
  if (parts === null) return [];
  const rounded = {
    min: atomicPercent(parts.least, bounds.step),
    max: atomicPercent(parts.most, bounds.step),
  };
  return (['min', 'max'] as const)
    .filter((key) => Math.abs(rounded[key] - bounds[key]) > 1e-9)
    .map((key) => `${what}: ${key} ${bounds[key]} at.% is rounded inwards to ${rounded[key]} at.%.`);
}

/** Parts as at.%, without the rounding of a product such as 3 × 0.1. */
function atomicPercent(parts: number, step: number): number {
  return Number((parts * step).toFixed(9));
}
