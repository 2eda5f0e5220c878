import type { Limit, Plan } from '@tiegel/contract';
import { meetsLimit } from '@tiegel/contract/terms';
import { type GridPoint, gridOf, pointList, pointsOf, pointValues } from '@tiegel/engine';
import { lateQuantities, lateValuesOf } from '@tiegel/insight/late';
import { bind, quantityFinder } from '@tiegel/screening';
import type { NewCandidates } from '@tiegel/store';
import { storedNames } from '../candidates/candidateColumns.ts';
import { ownOf } from '../namedIn.ts';
import type { KeptPoint } from './keptPoints.ts';

type Values = Record<string, number | null>;

/**
 * Makes candidates of many kept points at once, the first of a given rank: every quantity of the
 * search, by the names of the store; without those that do not meet what the search asks of kept
 * ones only. Values are worked out for the parts of the grid, as they were when the point was
 * scored: a candidate's ranked quantity is its score, to the last digit.
 *
 * @param columns ids of the search's quantities
 */
export function candidateMaker(
  plan: Plan,
  columns: readonly string[],
): (points: readonly KeptPoint[], firstRank: number) => NewCandidates {
  const { specification, facts, conditions } = plan;
  const { keptOnly = [], front } = specification;
  const late = lateQuantities.map(({ id }) => id).filter((id) => columns.includes(id));
  const closed = columns.filter((id) => !late.includes(id));
  const quantityOf = quantityFinder(ownOf(plan));
  const formulas = closed.map((id) => quantityOf(id).formula);
  const pointAt = pointsOf(gridOf(specification));
  const valuesAt = pointValues(bind(formulas, facts, conditions));
  const { of } = storedNames(columns);
  const places = new Map(facts.symbols.map((symbol, place) => [symbol, place]));

  /** Values of the quantities that kept points are asked for; null for a point that does not meet a limit. */
  function lateValues({ symbols, parts }: GridPoint): Values | null {
    const values: Values = {};
    if (keptOnly.length === 0) return values;
    const amounts = Object.fromEntries(symbols.map((symbol, place) => [symbol, parts[place]!]));
    const meets = (limit: Limit) => {
      const { quantity } = limit;
      if (!(quantity in values)) Object.assign(values, lateValuesOf(amounts, facts, [quantity], conditions));
      return meetsLimit(values[quantity] ?? null, limit) === true;
    };
    return keptOnly.every(meets) ? values : null;
  }

  return (points, firstRank) => {
    const made = points.flatMap((kept) => {
      const point = pointAt(kept.system, kept.point);
      const values = lateValues(point);
      return values === null ? [] : [{ ...point, kept, late: values }];
    });
    const list = made.map(({ symbols, parts }) => ({
      members: symbols.map((one) => places.get(one)!),
      parts,
    }));
    const found = valuesAt(pointList(list));
    const column = (valueIn: (one: (typeof made)[number]) => number | null | undefined) =>
      Float64Array.from(made, (one) => valueIn(one) ?? Number.NaN);
    return {
      firstRank,
      symbols: made.map(({ symbols }) => symbols),
      parts: made.map(({ parts }) => parts),
      scores: column(({ kept }) => kept.score),
      values: Object.fromEntries([
        ...closed.map((id, place) => [of(id), finite(found[place]!)] as const),
        ...late.map((id) => [of(id), column((one) => one.late[id])] as const),
      ]),
      ...(front && { front: Uint8Array.from(made, ({ kept }) => Number(kept.front)) }),
    };
  };
}

/** What is not finite is no value. */
function finite(values: Float64Array): Float64Array {
  for (let at = 0; at < values.length; at += 1) if (!Number.isFinite(values[at])) values[at] = Number.NaN;
  return values;
}
