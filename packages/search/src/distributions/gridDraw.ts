import type { Plan } from '@tiegel/contract';
import { meetsLimit } from '@tiegel/contract/terms';
import { gridOf, pointValues, sampleGrid } from '@tiegel/engine';
import { lateQuantities } from '@tiegel/insight/late';
import { bind, quantityFinder } from '@tiegel/screening';
import { ownOf } from '../namedIn.ts';

/** Points of a search's grid with their values. */
export interface GridDraw {
  /** points drawn, each being equally likely; all of the grid where `whole` */
  count: number;
  whole: boolean;
  /** whether each point meets all limits */
  passes: boolean[];
  /** values by id of a quantity, not finite where there is none; no entry for late quantities */
  values: ReadonlyMap<string, Float64Array>;
}

/** Late quantities are worked out for kept candidates alone. */
const late = new Set(lateQuantities.map(({ id }) => id));

/**
 * Draws points of the grid that a search was planned with, on the data of its plan, and works out
 * the quantities and whether each point passes. The same points each time.
 */
export function gridDraw(plan: Plan, quantities: readonly string[], size: number): GridDraw {
  const { specification, facts, conditions } = plan;
  const known = quantities.filter((id) => !late.has(id));
  const needed = [...new Set([...known, ...specification.limits.map(({ quantity }) => quantity)])];
  const quantityOf = quantityFinder(ownOf(plan));
  const program = bind(
    needed.map((id) => quantityOf(id).formula),
    facts,
    conditions,
  );
  const { points, whole } = sampleGrid(gridOf(specification), size, 1);
  const columns = pointValues(program)(points);
  const values = new Map(needed.map((id, place) => [id, columns[place]!]));
  const passes = Array.from({ length: points.count }, (_, at) =>
    specification.limits.every(
      (limit) => meetsLimit(finite(values.get(limit.quantity)![at]!), limit) === true,
    ),
  );
  return { count: points.count, whole, passes, values };
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
