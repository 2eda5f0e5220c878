import type { Tally } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { prepare, scoreChunk, scoreReference, warmUp } from '../../src/index.ts';
import { wholeChunk } from '../fixtures/chunks.ts';
import { planOf } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

test.each<Tally>(['each', 'all', 'none'])(
  'what was warmed up finds what the reference finds, tally %s',
  (tally) => {
    const specification = specificationWith({
      components: { min: 1, max: 4 },
      fractions: { step: 10, min: 10, max: 100, each: {} },
      limits: [{ quantity: 'density', max: 8 }],
      keep: 20,
      tally,
    });
    const prepared = prepare(planOf(specification));
    const chunk = wholeChunk(prepared);
    const expected = scoreReference(prepared, chunk, { cutOff: null });
    // Long enough for all of the grid, and too short for any of it.
    for (const milliseconds of [1000, 0]) {
      warmUp(prepared, milliseconds);
      expect(scoreChunk(prepared, chunk, { cutOff: null })).toEqual(expected);
    }
  },
);

test('a grid without points is warmed up all the same', () => {
  const grid = { components: { min: 3, max: 3 }, fractions: { step: 50, min: 50, max: 100, each: {} } };
  expect(() => warmUp(prepare(planOf(specificationWith(grid))), 10)).not.toThrow();
});
