import type { Limit, Preference } from '@tiegel/contract';
import { evaluator, quantities } from '@tiegel/screening';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { prepare } from '../../../src/index.ts';
import { kernelTask } from '../../../src/kernel/kernelTask.ts';
import { keyOf } from '../../../src/prepared/ranking.ts';
import { regionTests } from '../../../src/pruning/limits/regionTests.ts';
import { planOf } from '../../fixtures/plans.ts';
import { regionsOf } from '../../fixtures/regions.ts';
import { specificationWith } from '../../fixtures/specifications.ts';

const pool = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Hf', 'Mn', 'Mo', 'Nb', 'Ni', 'Re', 'Ti', 'V', 'W', 'Zr'];

const total = 50;

/** Expressions of one's own, made of exponentials that differ by many orders of magnitude. */
const lets: Record<string, string> = {
  ratio: '(2 + exp(valenceElectronConcentration - 6)) / (exp(mixingEnthalpy / 5) + exp(density / 3 - 2))',
  steep: '1 / (1 + exp(valenceElectronConcentration * 9 - 60) / (exp(mixingEnthalpy / 2) + 3))',
};

function preparedFor(limits: Limit[], quantity: string, prefer: Preference) {
  const plan = planOf(
    specificationWith({
      elements: { pool, require: [], forbid: [] },
      components: { min: 2, max: 6 },
      fractions: { step: 100 / total, min: 100 / total, max: 98, each: {} },
      limits,
      ...(lets[quantity] === undefined ? {} : { lets: { [quantity]: lets[quantity] } }),
      rank: [{ quantity, prefer }],
      tally: 'all',
    }),
  );
  return prepare({ ...plan, conditions: { grainSize: 30 } });
}

/** The values of a quantity at points of a system. */
function valuesOf(quantity: string, members: readonly number[], points: readonly number[][]): number[] {
  const { program, scoreOutput } = preparedFor([], quantity, 'low');
  const { evaluate } = evaluator(program);
  const values = new Float64Array(program.outputs.length);
  return points.map((point) => {
    evaluate(members, point, total, values);
    return values[scoreOutput]!;
  });
}

// The truth is the canonical evaluator at points of the box.
test('what is said of a limit and of a ranking over a box holds at its points, limits on their very values among them', () => {
  let [whole, none, near] = [0, 0, 0];
  const direction = fc.constantFrom('high' as const, 'low' as const);
  fc.assert(
    fc.property(
      regionsOf(pool.length, 2, [total]),
      fc.constantFrom(...quantities.map(({ id }) => id), ...Object.keys(lets)),
      fc.constantFrom(0, 0, 1e-12, -1e-12, 1e-6, -1e-6, 0.01, -0.01, 0.3, -0.3),
      fc.nat(),
      direction,
      direction,
      ({ members, box, points }, quantity, off, chosen, side, prefer) => {
        const values = valuesOf(quantity, members, points);
        const at = values[chosen % values.length]!;
        if (!Number.isFinite(at)) return;
        const edge = at + off * Math.max(1, Math.abs(at));
        const limit = { quantity, ...(side === 'low' ? { max: edge } : { min: edge }) };
        const prepared = preparedFor([limit], quantity, prefer);
        const tests = regionTests(prepared, kernelTask(prepared));
        tests.enter(members, total);
        tests.bound(box);
        const { least, greatest } = prepared.limits[0]!;
        const passes = values.filter((value) => value >= least && value <= greatest);
        const open = tests.stillOpen(tests.all);
        const key = tests.bestKey();
        for (const value of passes) expect(keyOf(value, prefer)).toBeGreaterThanOrEqual(key);
        if (open === null) {
          none += 1;
          expect(passes).toEqual([]);
        } else if (open.length === 0) {
          whole += 1;
          expect(passes).toEqual(values);
        }
        const best = Math.min(...passes.map((value) => keyOf(value, prefer)));
        if (best - key <= 0.05 * Math.abs(best)) near += 1;
      },
    ),
    { numRuns: 4000 },
  );
  // Tests that know nothing would pass as well: many must be decided, and bounds near.
  expect(Math.min(whole, none)).toBeGreaterThan(300);
  expect(near).toBeGreaterThan(1000);
}, 120_000);
