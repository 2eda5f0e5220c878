import { effectivePool } from '@tiegel/contract';
import { bind, evaluator, quantities } from '@tiegel/screening';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { gridOf, pointValues, sampleGrid } from '../../src/index.ts';
import { planOf, smallPlans } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

const all = quantities.map(({ formula }) => formula);

test('every quantity at many points is that of the evaluator, digit for digit', () => {
  fc.assert(
    fc.property(smallPlans, fc.nat(), (plan, seed) => {
      const grid = gridOf(plan.specification);
      const { points } = sampleGrid(grid, 300, seed);
      const program = bind(all, plan.facts);
      const found = pointValues(program)(points);
      const { evaluate } = evaluator(program);
      const expected = found.map(() => new Float64Array(points.count));
      const one = new Float64Array(all.length);
      for (let at = 0; at < points.count; at += 1) {
        const [start, end] = [points.starts[at]!, points.starts[at + 1]!];
        const parts = points.parts.subarray(start, end);
        evaluate(points.members.subarray(start, end), parts, points.wholes[at]!, one);
        for (const [output, value] of one.entries()) expected[output]![at] = value;
      }
      expect(found).toStrictEqual(expected);
    }),
    { numRuns: 60 },
  );
});

test('no points have no values', () => {
  const specification = specificationWith({ components: { min: 6, max: 6 } });
  const { points } = sampleGrid(gridOf(specification), 10, 1);
  const { facts } = planOf(specification);
  expect(facts.symbols).toEqual(effectivePool(specification.elements));
  expect(pointValues(bind(all, facts))(points)).toStrictEqual(all.map(() => new Float64Array(0)));
});
