import { demoPrices, factsFor } from '@tiegel/elements';
import {
  bind,
  divide,
  type Expression,
  evaluator,
  greater,
  linear,
  power,
  quantities,
  times,
} from '@tiegel/screening';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { prepare } from '../../../src/index.ts';
import { systemBounder } from '../../../src/pruning/bounds/systemBounder.ts';
import type { Box } from '../../../src/pruning/boxes/box.ts';
import { smallPlans } from '../../fixtures/plans.ts';
import { regionsOf } from '../../fixtures/regions.ts';

const pool = ['Al', 'B', 'Co', 'Cr', 'Cu', 'Fe', 'Hf', 'Mn', 'Mo', 'Nb', 'Ni', 'Re', 'Ti', 'V', 'W', 'Zr'];

const totals = [20, 100, 1000];
const regions = regionsOf(pool.length, 1, totals);

// 1000 boxes with 26 points of 34 quantities each.
test('every value of every quantity lies within the bounds of its box, and between its affine functions', () => {
  const program = bind(
    quantities.map(({ formula }) => formula),
    factsFor(pool, { prices: demoPrices }),
    { grainSize: 30 },
  );
  const outputs = quantities.map((_, output) => output);
  const bounder = systemBounder(
    program,
    outputs,
    6,
    quantities.findIndex(({ id }) => id === 'effectiveElements'),
  );
  const { evaluate } = evaluator(program);
  const values = new Float64Array(outputs.length);
  let narrow = 0;
  fc.assert(
    fc.property(regions, ({ members, total, box, points }) => {
      bounder.enter(members, total);
      bounder.bound(box);
      for (const point of points) {
        evaluate(members, point, total, values);
        for (const output of outputs) {
          const value = values[output]!;
          if (!Number.isFinite(value)) {
            expect(bounder.missing(output) > 0 || !hasEnds(bounder, output)).toBe(true);
            continue;
          }
          if (bounder.missing(output) === 2) expect.fail(`${quantities[output]!.id} has a value`);
          const [below, above] = [true, false].map((side) => affineAt(bounder, output, side, point, box));
          const ends = [bounder.low(output), bounder.high(output), below!, above!];
          const inside = value >= ends[0]! && value <= ends[1]! && value >= ends[2]! && value <= ends[3]!;
          if (!inside) expect.fail(`${quantities[output]!.id} is ${value}, not within ${ends.join(' ')}`);
          if (ends[1]! - ends[0]! < 0.05 * Math.abs(value)) narrow += 1;
        }
      }
    }),
    { numRuns: 1000 },
  );
  // Bounds that say nothing would pass as well: many of these must be narrow.
  expect(narrow).toBeGreaterThan(100_000);
}, 120_000);

type Bounder = ReturnType<typeof systemBounder>;

function hasEnds(bounder: Bounder, output: number): boolean {
  return Number.isFinite(bounder.low(output)) && Number.isFinite(bounder.high(output));
}

const slopes = new Float64Array(6);
function affineAt(bounder: Bounder, output: number, isBelow: boolean, point: number[], { low }: Box): number {
  const constant = bounder.affine(output, isBelow, slopes, 0);
  return point.reduce((sum, parts, at) => sum + slopes[at]! * (parts - low[at]!), constant);
}

test('rankings of any kind on invented data with gaps and ties are bounded, too', () => {
  const cases = smallPlans.chain((plan) =>
    regionsOf(plan.facts.symbols.length, 1, totals).map((region) => ({ plan, ...region })),
  );
  let [valued, narrow] = [0, 0];
  fc.assert(
    fc.property(cases, ({ plan, box, points, total, members }) => {
      const { program, scoreOutput } = prepare(plan);
      const bounder = systemBounder(program, [scoreOutput], 6);
      const { evaluate } = evaluator(program);
      const values = new Float64Array(program.outputs.length);
      bounder.enter(members, total);
      bounder.bound(box);
      const width = bounder.high(0) - bounder.low(0);
      for (const point of points) {
        evaluate(members, point, total, values);
        const value = values[scoreOutput]!;
        if (!Number.isFinite(value)) {
          expect(bounder.missing(0) > 0 || !hasEnds(bounder, 0)).toBe(true);
          continue;
        }
        expect(value >= bounder.low(0) && value <= bounder.high(0)).toBe(true);
        valued += 1;
        if (width < 0.1 * Math.abs(value)) narrow += 1;
      }
    }),
    { numRuns: 600 },
  );
  // Without a value nothing is bounded, and bounds that say nothing would hold.
  expect(valued).toBeGreaterThan(5000);
  expect(narrow).toBeGreaterThan(1000);
}, 120_000);

/** Expects the one output of a formula between its bounds at all points of a system of two elements with such values of a column. */
function expectBounded(formula: Expression, values: [number, number]): void {
  const facts = { symbols: ['Al', 'Cr'], columns: { own: values }, pairs: {} };
  const program = bind([formula], facts);
  const bounder = systemBounder(program, [0], 2);
  const box = { low: [1, 1], high: [99, 99], total: 100 };
  bounder.enter([0, 1], box.total);
  bounder.bound(box);
  const into = new Float64Array(1);
  for (let parts = 1; parts < box.total; parts += 1) {
    const point = [parts, box.total - parts];
    evaluator(program).evaluate([0, 1], point, box.total, into);
    const value = into[0]!;
    expect(value).toBeGreaterThanOrEqual(bounder.low(0));
    expect(value).toBeLessThanOrEqual(bounder.high(0));
    expect(value).toBeGreaterThanOrEqual(affineAt(bounder, 0, true, point, box));
    expect(value).toBeLessThanOrEqual(affineAt(bounder, 0, false, point, box));
  }
}

const own = linear('own');

test('the greater of 0 and of what is hardly ever above it is nowhere above its bound', () => {
  for (let part = 1; part <= 50; part += 1) {
    // 99 parts of the one and one of the other come to next to nothing.
    const values = (1 + part * 1e-7) / 99;
    expectBounded(greater(0, own), [values, -1]);
    expectBounded(greater(own, 0), [-1, values]);
  }
});

test.each<[string, Expression]>([
  ['a quotient of which coefficients vanish', divide(times(own, 1e-100), 1e150)],
  ['a quotient of which coefficients are infinite', divide(divide(own, 1e-150), 1e-150)],
  ['a quotient by what varies far from 1', divide(times(own, 1e-110), times(own, 1e110))],
  ['a curve so far out that its slope vanishes', power(times(own, 1e200), -1)],
])('%s is bounded', (_, formula) => {
  expectBounded(formula, [1, 1.2]);
  expectBounded(formula, [1, 3]);
});
