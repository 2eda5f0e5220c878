import type { RankEntry } from '@tiegel/contract';
import { factsFor } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { type Prepared, prepare, scoreReference } from '../../src/index.ts';
import { kernelTask } from '../../src/kernel/kernelTask.ts';
import { scoreKernel } from '../../src/kernel/scoreKernel.ts';
import { wholeChunk } from '../fixtures/chunks.ts';
import { planOf } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

const pool = ['Al', 'Co', 'Cr', 'Ni', 'Ti', 'W', 'Zr'];

/** Of a lesser and a greater one both ends are asked for. */
const ownMerit = 'sqrt(density) * meltingTemperature ^ 1.5';

type Desirability = Pick<RankEntry, 'weight' | 'shape'>;

/** Ranked by three desirabilities with these weights and shapes; some points are 0 in one, some 1 in all but one. */
function search(given: readonly Desirability[], keep: number, own?: 'high' | 'low'): Prepared {
  const of = [
    { quantity: 'density', prefer: 'low', from: 4, to: 14 },
    { quantity: 'valenceElectronConcentration', prefer: 'high', from: 4, to: 8 },
    { quantity: 'meltingTemperature', prefer: 'high', from: 1200, to: 2600 },
  ] as const;
  const facts = factsFor(pool);
  return prepare(
    planOf(
      specificationWith({
        elements: { pool, require: [], forbid: [] },
        components: { min: 2, max: 4 },
        fractions: { step: 10, min: 10, max: 80, each: {} },
        limits: [{ quantity: 'mixingEnthalpy', max: 2 }],
        rank: given.map((one, at) => ({ ...of[at]!, ...one })),
        ...(own && { lets: { merit: ownMerit }, rank: [{ quantity: 'merit', prefer: own }] }),
        keep,
      }),
      facts,
    ),
  );
}

/** What is compared is the score raised so often: weight · shape / Σ weights becomes whole. */
test.each([
  ['equal weights', [{}, {}, {}], 3],
  ['weights', [{ weight: 2 }, { weight: 1 }, { weight: 0.5 }], 7],
  ['shapes', [{ weight: 2 }, { shape: 0.5 }, { weight: 0.5, shape: 2 }], 7],
  ['two of them', [{ shape: 1.5 }, {}], 4],
  ['weights without a common measure', [{ weight: 1 }, { weight: Math.PI }, {}], null],
  ['no roots at all', [{}], null],
])('%s keep what the reference keeps, however few', (_, given, times) => {
  expectSame((keep) => search(given, keep), times);
});

test.each(['high', 'low'] as const)("a product of powers of one's own, %s", (own) => {
  expectSame((keep) => search([], keep, own), 2);
});

/** @param times how often the score is raised; null: it is compared itself */
function expectSame(prepare: (keep: number) => Prepared, times: number | null): void {
  for (const keep of [1, 3, 20, 200]) {
    const prepared = prepare(keep);
    const { raised } = kernelTask(prepared)!;
    if (times === null) expect(raised).toBeNull();
    else expect(Math.log(raised!.of(0.5)) / Math.log(0.5)).toBeCloseTo(times, 12);
    const chunk = wholeChunk(prepared);
    const expected = scoreReference(prepared, chunk, { cutOff: null })!;
    expect(scoreKernel(prepared, chunk, { cutOff: null })).toStrictEqual(expected);
    // A cut-off that is the score of a point itself, which is still kept.
    const worst = expected.best.at(-3)!;
    const again = scoreKernel(prepared, chunk, { cutOff: worst })!;
    expect(again.best).toStrictEqual(scoreReference(prepared, chunk, { cutOff: worst })!.best);
  }
}
