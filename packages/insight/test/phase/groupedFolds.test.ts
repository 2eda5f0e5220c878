import fc from 'fast-check';
import { expect, test } from 'vitest';
import { groupedFolds } from '../../src/phase/groupedFolds.ts';
import { trainingAlloys } from '../../src/phase/trainingAlloys.ts';

const alloys = trainingAlloys();
const systems = alloys.map(({ alloy }) => alloy.system);
const classes = alloys.map(({ phaseClass }) => phaseClass);

test('no group is in two folds, and the same seed gives the same folds', () => {
  const rows = fc.array(fc.tuple(fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f', 'g'), fc.nat(3)), {
    minLength: 1,
  });
  fc.assert(
    fc.property(rows, fc.nat(), fc.integer({ min: 2, max: 6 }), (drawn, seed, folds) => {
      const groups = drawn.map(([group]) => group);
      const of = drawn.map(([, one]) => one);
      const found = groupedFolds(groups, of, { folds, seed });
      const foldsOf = Map.groupBy(found.keys(), (row) => groups[row]!);
      for (const members of foldsOf.values()) expect(new Set(members.map((row) => found[row])).size).toBe(1);
      for (const fold of found) expect(fold >= 0 && fold < folds).toBe(true);
      expect(groupedFolds(groups, of, { folds, seed })).toEqual(found);
    }),
  );
});

test('groups of one are shared out as evenly as can be, class by class', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(3), { minLength: 1, maxLength: 60, size: 'max' }), fc.nat(), (of, seed) => {
      const found = groupedFolds(
        of.map((_, row) => `${row}`),
        of,
        { folds: 5, seed },
      );
      for (const one of new Set(of)) {
        const counts = [0, 1, 2, 3, 4].map(
          (fold) => found.filter((f, row) => f === fold && of[row] === one).length,
        );
        expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
      }
    }),
  );
});

test('of the published alloys each fold gets a fifth of each class, within a twentieth', () => {
  for (let seed = 0; seed < 20; seed++) {
    const found = groupedFolds(systems, classes, { folds: 5, seed });
    for (const one of [0, 1, 2, 3]) {
      const all = classes.filter((k) => k === one).length;
      for (let fold = 0; fold < 5; fold++) {
        const inside = found.filter((f, row) => f === fold && classes[row] === one).length;
        expect(Math.abs(inside / all - 0.2)).toBeLessThan(0.05);
      }
    }
  }
});

test('another seed divides the published alloys otherwise', () => {
  const [one, other] = [0, 1].map((seed) => groupedFolds(systems, classes, { folds: 5, seed }));
  expect(other).not.toEqual(one);
});
