import type { Facts } from '@tiegel/contract';
import {
  absolute,
  atMost,
  below,
  bind,
  choose,
  column,
  constant,
  divide,
  type Expression,
  entropy,
  evaluator,
  exponential,
  greater,
  greatest,
  greatestPair,
  least,
  leastPair,
  lesser,
  linear,
  logarithm,
  minus,
  negate,
  pairColumn,
  pairs,
  plus,
  power,
  squareRoot,
  times,
  variance,
  within,
} from '@tiegel/screening';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { blockProgram } from '../../src/blocks/blockProgram.ts';
import { systemBlocks } from '../../src/blocks/systemBlocks.ts';
import { wholeOf } from '../../src/grid/grid.ts';
import { gridOf } from '../../src/grid/gridOf.ts';
import { pointNumbering } from '../../src/grid/pointNumbering.ts';
import { systemNumbering } from '../../src/grid/systemNumbering.ts';
import { smallGrids } from '../fixtures/specifications.ts';

/** Every kind of node, over columns of either sign, decimal or not, with values missing. */
const { expression } = fc.letrec<{ expression: Expression }>((tie) => {
  const of = tie('expression');
  const two = fc.tuple(of, of);
  const columnName = fc.constantFrom('whole', 'broken', 'signed');
  const leaves = fc.oneof(
    fc.constantFrom(-2, 0, 0.5, 3).map((value) => constant(value)),
    fc.constantFrom(
      entropy(),
      pairs(pairColumn('bond')),
      leastPair(pairColumn('bond')),
      greatestPair(pairColumn('bond')),
    ),
    columnName.map((name) => linear(name)),
    columnName.map((name) => variance(name)),
    columnName.map((name) => least(column(name))),
    columnName.map((name) => greatest(column(name))),
  );
  const operators = fc.oneof(
    two.chain(([a, b]) =>
      fc.constantFrom(plus(a, b), minus(a, b), times(a, b), divide(a, b), lesser(a, b), greater(a, b)),
    ),
    of.chain((a) => fc.constantFrom(negate(a), squareRoot(a), absolute(a), exponential(a), logarithm(a))),
    fc.tuple(of, fc.constantFrom(-1, 0, 0.5, 2, 3.7)).map(([a, exponent]) => power(a, exponent)),
    fc
      .tuple(two, two)
      .chain(([[a, b], [c, d]]) =>
        fc.constantFrom(
          choose(below(a, b), c, d),
          choose(atMost(a, b), c, d),
          within(below(a, b), c),
          within(atMost(a, b), d),
        ),
      ),
  );
  return { expression: fc.oneof({ maxDepth: 4, withCrossShrink: true }, leaves, operators) };
});

function factsOf(symbols: readonly string[]): fc.Arbitrary<Facts> {
  const values = (from: fc.Arbitrary<number>) =>
    fc.array(fc.option(from, { freq: 20 }), { minLength: symbols.length, maxLength: symbols.length });
  const broken = fc.double({ min: 0.1, max: 30, noNaN: true });
  return fc
    .record({
      whole: values(fc.integer({ min: 1, max: 12 })),
      broken: values(broken),
      signed: values(fc.integer({ min: -9, max: 9 }).map((number) => number / 8)),
      bond: fc.array(values(fc.oneof(fc.integer({ min: -20, max: 20 }), broken)), {
        minLength: symbols.length,
        maxLength: symbols.length,
      }),
    })
    .map(({ bond, ...columns }) => ({
      symbols: [...symbols],
      columns,
      pairs: {
        bond: bond.map((row, i) => row.map((_, j) => (i === j ? 0 : bond[Math.max(i, j)]![Math.min(i, j)]!))),
      },
    }));
}

// Where a loop could differ from the canonical step unseen: a zero that has a sign, NaN to the
// power of 0, −∞ to a broken power, a comparison of equal sides, one with a missing side. A variance of one element is 0.
const zero = variance('whole');
const none = divide(zero, zero);
const traps: Expression[] = [
  divide(linear('whole'), negate(zero)),
  power(negate(zero), -1),
  power(none, 0),
  power(logarithm(zero), 0.5),
  choose(below(zero, negate(zero)), 1, 2),
  choose(atMost(zero, negate(zero)), 1, 2),
  choose(below(none, zero), 1, 2),
  choose(atMost(zero, none), 1, 2),
  within(below(zero, zero), 1),
  lesser(none, 1),
  greater(1, none),
];

const cases = smallGrids.map(gridOf).chain((grid) =>
  fc.record({
    grid: fc.constant(grid),
    facts: factsOf(grid.symbols),
    limited: fc.array(expression, { maxLength: 3 }),
    score: fc.oneof(
      { weight: 3, arbitrary: expression },
      { weight: 1, arbitrary: fc.constantFrom(...traps) },
    ),
    capacity: fc.constantFrom(1, 2, 7, 64),
  }),
);

test('every step has the value of the canonical evaluator at every point, to the last bit', () => {
  fc.assert(
    fc.property(cases, ({ grid, facts, limited, score, capacity }) => {
      const program = bind([...limited, score], facts);
      const canonical = evaluator(program);
      const outputs = limited.map((_, output) => output);
      const inBlocks = blockProgram(program, outputs, limited.length, grid.components.max, capacity);
      const blocks = systemBlocks(grid, capacity);
      const { count, systemAt } = systemNumbering(grid);
      const all = Int32Array.from({ length: capacity }, (_, place) => place);
      const expected = new Float64Array(program.outputs.length);
      // Twice, since systems with bounds that were met before come from blocks that were kept.
      for (let visit = 0; visit < 2 * count; visit += 1) {
        const system = systemAt(visit % count);
        const points = pointNumbering(grid, system);
        const whole = wholeOf(grid, system.length);
        inBlocks.enter(system, whole);
        let point = 0;
        blocks.visit(system, 0, null, (block) => {
          inBlocks.place(block, 0);
          inBlocks.compute(block.count);
          const scores = inBlocks.scores(all, block.count);
          for (let place = 0; place < block.count; place += 1, point += 1) {
            canonical.evaluate(system, points.partsAt(point), whole, expected);
            const found = [...inBlocks.limited.map((values) => values[place]!), scores[place]!];
            // −0 counts as 0.
            if (
              found.some(
                (value, output) =>
                  value !== expected[output] && !(Number.isNaN(value) && Number.isNaN(expected[output])),
              )
            ) {
              expect(found).toEqual(Array.from(expected));
            }
          }
          return true;
        });
        if (point !== points.count) expect(point).toBe(points.count);
      }
    }),
    { numRuns: 300 },
  );
});
