import { readFileSync } from 'node:fs';
import {
  type Chunk,
  effectivePool,
  numbersPerRankedPoint,
  type Outcome,
  type Plan,
  type SearchSpecification,
  searchSpecificationFor,
} from '@tiegel/contract';
import { factsFor, symbols } from '@tiegel/elements';
import {
  candidateAt,
  countSystems,
  cutOffOf,
  emptyOutcome,
  engineVersion,
  gridOf,
  mergeOutcomes,
  planChunks,
  prepare,
  rankingOf,
  type Score,
} from '@tiegel/engine';
import { conditions, quantities } from '@tiegel/screening';
import type { Found } from '../independent/exhaustive.ts';
import { prices, type Variant, written } from './variant.ts';

const { check } = searchSpecificationFor({
  quantities,
  elements: symbols,
  conditions: Object.values(conditions),
});

/** A scorer of packages/engine by itself, in this thread; the chunks in the order given. */
export function engineVariant(score: Score, order: (chunks: Chunk[]) => Chunk[]): Variant {
  return {
    async find(file) {
      const { specification } = check(JSON.parse(readFileSync(file, 'utf8')));
      const prepared = prepare(planOf(specification));
      const ranking = rankingOf(specification);
      const chunks = planChunks(prepared.grid, { pointsPerChunk: 20_000, workers: 2 });
      let all = emptyOutcome(specification.limits.length);
      for (const chunk of order(chunks)) {
        const outcome = score(prepared, chunk, { cutOff: cutOffOf(all, ranking) });
        all = mergeOutcomes(all, outcome!, ranking);
      }
      return foundOf(all, specification);
    },
  };
}

function planOf(specification: SearchSpecification): Plan {
  const facts = factsFor(effectivePool(specification.elements), { prices });
  const { conditions: set = {} } = specification;
  return { engineVersion, dataVersion: 'as it stands', specification, facts, conditions: set };
}

function foundOf(outcome: Outcome, specification: SearchSpecification): Found {
  const grid = gridOf(specification);
  const { points, passed, passedEach, outside } = outcome;
  const counts = { systems: Number(countSystems(grid)), points, passed, passedEach, outside };
  const high = rankingOf(specification).prefer === 'high';
  const kept = new Map(
    [...triples(outcome.best), ...triples(outcome.bestOfSystems)].map((one) => [one.join(), one]),
  );
  const ordered = [...kept.values()].sort(
    (left, right) => keyOf(left, high) - keyOf(right, high) || left[1] - right[1] || left[2] - right[2],
  );
  const candidates = ordered.map(([score, system, point]): Found['candidates'][number] => [
    written(candidateAt(grid, system, point).composition),
    Number.isNaN(score) ? null : score,
  ]);
  return { counts, candidates };
}

function keyOf([score]: readonly number[], high: boolean): number {
  if (Number.isNaN(score!)) return Number.MAX_VALUE;
  return high ? -score! : score!;
}

function triples(points: Float64Array): [score: number, system: number, point: number][] {
  return Array.from({ length: points.length / numbersPerRankedPoint }, (_, index) => {
    const [score, system, point] = points.subarray(index * numbersPerRankedPoint);
    return [score!, system!, point!];
  });
}
