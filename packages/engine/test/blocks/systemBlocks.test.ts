import { entropyTerm } from '@tiegel/screening';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { PointBlock } from '../../src/blocks/pointBlock.ts';
import { systemBlocks } from '../../src/blocks/systemBlocks.ts';
import { wholeOf } from '../../src/grid/grid.ts';
import { gridOf } from '../../src/grid/gridOf.ts';
import { pointNumbering } from '../../src/grid/pointNumbering.ts';
import { systemNumbering } from '../../src/grid/systemNumbering.ts';
import { smallGrids, specificationWith } from '../fixtures/specifications.ts';

test('any range of points of any system comes in order, none missing, with its entropy', () => {
  const ranges = fc.record({ capacity: fc.integer({ min: 1, max: 40 }), from: fc.nat(), to: fc.nat() });
  fc.assert(
    fc.property(smallGrids.map(gridOf), ranges, (grid, { capacity, from, to }) => {
      const blocks = systemBlocks(grid, capacity);
      const { count, systemAt } = systemNumbering(grid);
      for (let number = 0; number < count; number += 1) {
        const system = systemAt(number);
        const points = pointNumbering(grid, system);
        if (points.count === 0) continue;
        const first = from % points.count;
        const end = first + 1 + (to % (points.count - first));
        for (const [start, stop] of [
          [0, null],
          [first, end],
          [first, null],
          [0, null],
        ] as const) {
          const found: number[][] = [];
          blocks.visit(
            system,
            start,
            stop,
            (block) => found.push(...amountsOf(block, wholeOf(grid, system.length))) > 0,
          );
          const expected = Array.from({ length: (stop ?? points.count) - start }, (_, at) =>
            points.partsAt(start + at),
          );
          if (found.join(';') !== expected.join(';')) expect(found).toEqual(expected);
        }
      }
    }),
    { numRuns: 150 },
  );
});

test('a visit ends when its taker says so', () => {
  const grid = gridOf(specificationWith({ fractions: { step: 5, min: 5, max: 100, each: {} } }));
  const blocks = systemBlocks(grid, 10);
  for (let again = 0; again < 3; again += 1) {
    let taken = 0;
    expect(blocks.visit([0, 1, 2], 0, null, () => ++taken < 2)).toBe(false);
    expect(taken).toBe(2);
  }
});

/** The amounts of each point of a block; its entropy is checked on the way. */
function amountsOf({ count, levels, last, entropy }: PointBlock, whole: number): number[][] {
  return Array.from({ length: count }, (_, point) => {
    const amounts = [last[point]!];
    let at = point;
    for (const { parent, parts } of levels.toReversed()) {
      amounts.unshift(parts[at]!);
      at = parent[at]!;
    }
    const expected = amounts.reduce((sum, amount) => sum - entropyTerm(amount / whole), 0);
    if (entropy[point] !== expected) expect(entropy[point]).toBe(expected);
    return amounts;
  });
}
