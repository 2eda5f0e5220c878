import type { Plan } from '@tiegel/contract';
import { gridOf, pointsOf } from '@tiegel/engine';
import { lateQuantities, lateValuesOf, meetsLimit } from '@tiegel/insight';
import { quantityFinder, screening } from '@tiegel/screening';
import type { NewCandidate } from '@tiegel/store';
import { storedNames } from './candidateColumns.ts';
import type { KeptPoint } from './keptPoints.ts';
import { ownOf } from './namedIn.ts';

/**
 * Makes candidates of kept points: every quantity of the search, by the names of the store. Values
 * are worked out for the parts of the grid, as they were when the point was scored: a candidate's
 * ranked quantity is its score, to the last digit.
 *
 * @param columns ids of the search's quantities
 * @returns null for a point that does not meet what the search asks of kept ones only
 */
export function candidateMaker(plan: Plan, columns: readonly string[]) {
  const { specification, facts, conditions } = plan;
  const { keptOnly = [] } = specification;
  const late = lateQuantities.map(({ id }) => id).filter((id) => columns.includes(id));
  const quantityOf = quantityFinder(ownOf(plan));
  const definitions = columns.filter((id) => !late.includes(id)).map((id) => quantityOf(id));
  const pointAt = pointsOf(gridOf(specification));
  const valuesOf = screening(facts, definitions, conditions);
  const { toStored } = storedNames(columns);

  return ({ score, system, point }: KeptPoint, rank: number): NewCandidate | null => {
    const { symbols, parts } = pointAt(system, point);
    const amounts = Object.fromEntries(symbols.map((symbol, place) => [symbol, parts[place]!]));
    const lateValues: Record<string, number | null> = {};
    for (const limit of keptOnly) {
      const { quantity } = limit;
      if (!(quantity in lateValues))
        Object.assign(lateValues, lateValuesOf(amounts, facts, [quantity], conditions));
      if (meetsLimit(lateValues[quantity] ?? null, limit) !== true) return null;
    }
    return { rank, symbols, parts, score, quantities: toStored({ ...valuesOf(amounts), ...lateValues }) };
  };
}
