import type { Distributions } from '@tiegel/contract';
import { type PointList, pointValues, sampleGrid } from '@tiegel/engine';
import { bind, ownQuantities, quantityFinder } from '@tiegel/screening';
import { type CheckedSearch, checkGrid } from '../asking/check.ts';
import type { LabData } from '../labData.ts';
import { ownOf } from '../namedIn.ts';
import { namesIn } from './namesIn.ts';
import {
  type DistributionsAsked,
  inSpecification,
  readDistributionsRequest,
} from './readDistributionsRequest.ts';
import { shareError } from './shareError.ts';

/**
 * Draws points of a specification's grid, each being equally likely, and says how quantities lie
 * over them and how many of them each limit leaves. No point of the grid is visited but those
 * drawn: a grid of 10^13 points is as quick as a small one.
 *
 * Throws a ProblemError with the faults of the question, and with those of its specification as
 * checkSearch does, but for limits out of reach: whoever looks for a better limit needs an answer.
 */
export function distributionsOf(request: unknown, data: LabData, maxPoints: number): Distributions {
  const asked = readDistributionsRequest(request);
  const checked = inSpecification(() => checkGrid(asked.specification, data, maxPoints));
  const { plan, grid, prepared, systems, points } = checked;
  const shown = shownQuantities(asked, checked);
  const needed = [...new Set([...shown, ...prepared.limited])];
  const quantityOf = quantityFinder(ownOf(plan));
  const formulas = needed.map((id) => quantityOf(id).formula);
  const { points: drawn, whole } = sampleGrid(grid, asked.sample, asked.seed);
  const columns = pointValues(bind(formulas, plan.facts, plan.conditions))(drawn);
  const valuesOf = (id: string) => columns[needed.indexOf(id)]!;

  const { shares, sharesWithout, passed } = passing(checked, valuesOf, drawn.count);
  return {
    ...{ systems, points, sample: drawn.count, seed: asked.seed },
    ...(asked.compositions ? { compositions: compositionsOf(grid.symbols, drawn) } : {}),
    quantities: shown.map((quantity) => ({
      quantity,
      values: Array.from(valuesOf(quantity), (value) => (Number.isFinite(value) ? value : null)),
    })),
    limits: plan.specification.limits.map(({ quantity }, limit) => ({
      quantity,
      share: shares[limit]!,
      shareWithout: sharesWithout[limit]!,
    })),
    passed,
    error: whole ? 0 : shareError(passed, drawn.count),
  };
}

/** Those asked for, else the limited and the ranked ones, each once. Throws quantity/unknown for each that there is not. */
function shownQuantities(
  { quantities, ranked }: DistributionsAsked & { ranked: boolean },
  { plan }: CheckedSearch,
): string[] {
  const { specification } = plan;
  if (quantities !== null) {
    const own = ownQuantities(ownOf(plan)).map(({ id }) => id);
    namesIn(quantities, '/quantities', own);
    return [...new Set(quantities)];
  }
  const { limits, rank, front = [] } = specification;
  return [...new Set([...limits, ...(ranked ? rank : []), ...front].map(({ quantity }) => quantity))];
}

/** Shares of the points that meet each limit, all limits but each, and all limits. */
function passing(
  { prepared: { limits, limited } }: CheckedSearch,
  valuesOf: (id: string) => Float64Array,
  count: number,
): { shares: number[]; sharesWithout: number[]; passed: number } {
  const each = limits.map(() => 0);
  const without = limits.map(() => 0);
  const values = limits.map(({ output }) => valuesOf(limited[output]!));
  let passed = 0;
  for (let at = 0; at < count; at += 1) {
    let failed = 0;
    let failing = 0;
    for (const [limit, { least, greatest }] of limits.entries()) {
      const value = values[limit]![at]!;
      if (value >= least && value <= greatest) each[limit]! += 1;
      else {
        failed += 1;
        failing = limit;
      }
    }
    if (failed === 0) passed += 1;
    // A point that fails one limit alone meets all others.
    else if (failed === 1) without[failing]! += 1;
  }
  return {
    shares: each.map((met) => met / count),
    sharesWithout: without.map((only) => (passed + only) / count),
    passed: passed / count,
  };
}

function compositionsOf(symbols: readonly string[], points: PointList): Record<string, number>[] {
  return Array.from({ length: points.count }, (_, at) => {
    const composition: Record<string, number> = {};
    for (let place = points.starts[at]!; place < points.starts[at + 1]!; place += 1) {
      composition[symbols[points.members[place]!]!] = (100 * points.parts[place]!) / points.wholes[at]!;
    }
    return composition;
  });
}
