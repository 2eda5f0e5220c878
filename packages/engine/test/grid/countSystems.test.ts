import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countSystems, gridOf } from '../../src/index.ts';
import { everyPoint } from '../fixtures/everyPoint.ts';
import { smallGrids, specificationWith } from '../fixtures/specifications.ts';

test('the systems counted are those that plain enumeration finds a point in', () => {
  fc.assert(
    fc.property(smallGrids, (specification) => {
      const systems = new Set(everyPoint(specification).map(({ symbols }) => symbols.join('-')));
      expect(countSystems(gridOf(specification))).toBe(systems.size);
    }),
    { numRuns: 300 },
  );
});

test('a system without room for its bounds is not one', () => {
  const fractions = { step: 5, min: 5, max: 100, each: { Al: { min: 60 }, Co: { min: 45 } } };
  const grid = gridOf(specificationWith({ components: { min: 2, max: 2 }, fractions }));
  // Of ten pairs, aluminium and cobalt have no room for each other.
  expect(countSystems(grid)).toBe(9);
});
