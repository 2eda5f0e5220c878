import fc from 'fast-check';
import { expect, test } from 'vitest';
import { systemNumbering } from '../../src/grid/systemNumbering.ts';
import { gridOf } from '../../src/index.ts';
import { smallGrids, specificationWith } from '../fixtures/specifications.ts';

test('systems are numbered as their symbol lists are ordered, a list before its extensions', () => {
  const grid = gridOf(specificationWith({ components: { min: 1, max: 3 } }));
  const { count, systemAt } = systemNumbering(grid);
  const names = Array.from({ length: count }, (_, number) =>
    systemAt(number)
      .map((at) => grid.symbols[at])
      .join('-'),
  );
  expect(names.slice(0, 6)).toEqual(['Al', 'Al-Co', 'Al-Co-Cr', 'Al-Co-Fe', 'Al-Co-Ni', 'Al-Cr']);
  // 5 + 10 + 10 subsets
  expect(names).toHaveLength(25);
  expect(names.at(-1)).toBe('Ni');
});

test('number and system lead to each other, and advancing goes through all of them in order', () => {
  fc.assert(
    fc.property(smallGrids, (specification) => {
      const { count, systemAt, numberOf, advance } = systemNumbering(gridOf(specification));
      if (count === 0) return;
      const walking = systemAt(0);
      for (let number = 0; number < count; number++) {
        const system = systemAt(number);
        expect(walking).toEqual(system);
        expect(numberOf(system)).toBe(number);
        expect(advance(walking)).toBe(number + 1 < count);
      }
    }),
  );
});

test('a number that no system has is refused', () => {
  const { count, systemAt } = systemNumbering(gridOf(specificationWith()));
  expect(() => systemAt(count)).toThrow(RangeError);
  expect(() => systemAt(-1)).toThrow(RangeError);
});

test('numbers reach into the ten thousands of millions without loss', () => {
  const elements = {
    pool: Array.from({ length: 56 }, (_, index) => `X${String(index).padStart(2, '0')}`),
    require: [],
    forbid: [],
  };
  const grid = gridOf(
    specificationWith({ elements, components: { min: 10, max: 10 }, fractions: 'equimolar' }),
  );
  const { count, systemAt, numberOf } = systemNumbering(grid);
  expect(count).toBe(35_607_051_480); // C(56, 10)
  fc.assert(
    fc.property(fc.integer({ min: 0, max: count - 1 }), (number) => {
      expect(numberOf(systemAt(number))).toBe(number);
    }),
  );
});
