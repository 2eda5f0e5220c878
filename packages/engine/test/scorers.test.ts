import type { Limit } from '@tiegel/contract';
import { evaluator } from '@tiegel/screening';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scoreBlocks } from '../src/blocks/scoreBlocks.ts';
import { pointNumbering } from '../src/grid/pointNumbering.ts';
import {
  candidateAt,
  cutOffOf,
  mergeOutcomes,
  type Prepared,
  planChunks,
  prepare,
  scoreReference,
} from '../src/index.ts';
import { scoreKernel } from '../src/kernel/scoreKernel.ts';
import { scoredInChunks, wholeChunk } from './fixtures/chunks.ts';
import { planOf, smallPlans } from './fixtures/plans.ts';
import { specificationWith } from './fixtures/specifications.ts';

describe.each([
  ['by blocks', scoreBlocks],
  ['by a kernel', scoreKernel],
])('%s', (_, score) => {
  test('any search has the outcome of the reference, digit for digit', () => {
    fc.assert(
      fc.property(smallPlans, (plan) => {
        const prepared = prepare(plan);
        if (prepared.systems.count === 0) return;
        const chunk = wholeChunk(prepared);
        const expected = scoreReference(prepared, chunk, { cutOff: null });
        expect(score(prepared, chunk, { cutOff: null })).toStrictEqual(expected);
      }),
      { numRuns: 400 },
    );
  });

  test('limits that lie on the values of points, or at the edge of what counts as on them, are met alike', () => {
    fc.assert(
      fc.property(
        smallPlans,
        fc.array(fc.nat(), { minLength: 1, maxLength: 4 }),
        fc.constantFrom(0, 1e-12, -1e-12),
        (plan, picks, shift) => {
          const { specification } = plan;
          const prepared = prepare(plan);
          const limits = picks.flatMap((pick) => limitAt(prepared, pick, shift));
          const tight = prepare({ ...plan, specification: { ...specification, limits } });
          if (tight.systems.count === 0) return;
          const chunk = wholeChunk(tight);
          const expected = scoreReference(tight, chunk, { cutOff: null });
          expect(score(tight, chunk, { cutOff: null })).toStrictEqual(expected);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('a search in any chunks, systems cut or not, has the outcome of the whole', () => {
    fc.assert(
      fc.property(smallPlans, fc.integer({ min: 1, max: 300 }), (plan, pointsPerChunk) => {
        const prepared = prepare(plan);
        if (prepared.systems.count === 0) return;
        const expected = scoreReference(prepared, wholeChunk(prepared), { cutOff: null });
        expect(scoredInChunks(prepared, score, pointsPerChunk)).toEqual(expected);
      }),
      { numRuns: 150 },
    );
  });

  test('a cut-off from elsewhere changes nothing that is kept after merging', () => {
    fc.assert(
      fc.property(smallPlans, fc.integer({ min: 20, max: 300 }), (plan, pointsPerChunk) => {
        const prepared = prepare(plan);
        const [first, ...others] = planChunks(prepared.grid, { pointsPerChunk, workers: 1 });
        if (!first) return;
        for (const one of [score, scoreReference]) {
          let merged = one(prepared, first, { cutOff: null })!;
          for (const chunk of others) {
            const cutOff = cutOffOf(merged, prepared.ranking);
            merged = mergeOutcomes(merged, one(prepared, chunk, { cutOff })!, prepared.ranking);
          }
          expect(merged).toEqual(scoredInChunks(prepared, scoreReference, pointsPerChunk));
        }
      }),
      { numRuns: 100 },
    );
  });

  test('a cut-off spares what is strictly worse, and keeps what ties with it', () => {
    const prepared = prepare(planOf(specificationWith({ keep: 3 })));
    const chunk = wholeChunk(prepared);
    const all = score(prepared, chunk, { cutOff: null })!;
    const second = all.best[3]!;
    expect(score(prepared, chunk, { cutOff: second })!.best).toEqual(all.best.slice(0, 6));
  });

  test.each([
    [7, { min: 7, max: 7 }, 5],
    [6, { min: 2, max: 6 }, 4],
  ])(
    'systems of up to %i elements, larger than a block and repeated, have the outcome of the reference',
    (_, components, step) => {
      const elements = { pool: ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Ni', 'Ti'], require: [], forbid: [] };
      const limits = [
        { quantity: 'sizeMismatch', max: 6.6 },
        { quantity: 'omega', min: 1.1 },
        { quantity: 'valenceElectronConcentration', min: 6, max: 8 },
        { quantity: 'mixingEnthalpy', min: -15, max: -8 },
      ];
      const fractions = { step, min: step, max: 100, each: {} };
      const prepared = prepare(
        planOf(specificationWith({ elements, components, fractions, limits, keep: 50, keepPerSystem: 2 })),
      );
      const chunk = planChunks(prepared.grid, { pointsPerChunk: 60_000, workers: 1 })[1]!;
      expect(score(prepared, chunk, { cutOff: null })).toStrictEqual(
        scoreReference(prepared, chunk, { cutOff: null }),
      );
    },
  );

  test('scoring ends when it is told to', () => {
    const fractions = { step: 1, min: 1, max: 100, each: {} };
    const prepared = prepare(planOf(specificationWith({ components: { min: 5, max: 5 }, fractions })));
    const chunk = wholeChunk(prepared);
    for (const one of [score, scoreReference]) {
      let questions = 0;
      const stopped = () => ++questions > 3;
      expect(one(prepared, chunk, { cutOff: null, stopped })).toBeNull();
      expect(questions).toBe(4);
    }
  });
});

/** A limit on the very value that some quantity has at some point, or off it by a share of the tolerance. */
function limitAt({ grid, systems, program, limited, plan }: Prepared, pick: number, shift: number): Limit[] {
  if (systems.count === 0 || limited.length === 0) return [];
  const number = pick % systems.count;
  const system = systems.systemAt(number);
  const points = pointNumbering(grid, system).count;
  if (points === 0) return [];
  const { parts, total } = candidateAt(grid, number, pick % points);
  const values = new Float64Array(program.outputs.length);
  evaluator(program).evaluate(system, parts, total, values);
  const output = pick % limited.length;
  const on = values[output]!;
  if (!Number.isFinite(on)) return [];
  const edge = on + shift * Math.max(1, Math.abs(on));
  const quantity = plan.specification.limits[0]!.quantity;
  return [{ quantity: limited[output] ?? quantity, ...(pick % 2 === 0 ? { min: edge } : { max: edge }) }];
}
