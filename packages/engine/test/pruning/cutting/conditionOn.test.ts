import { demoPrices, factsFor } from '@tiegel/elements';
import {
  absolute,
  atMost,
  bind,
  choose,
  constant,
  divide,
  type Expression,
  entropy,
  evaluator,
  exponential,
  greater,
  lesser,
  linear,
  minus,
  negate,
  plus,
  quantities,
  squareRoot,
  times,
  variance,
} from '@tiegel/screening';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { systemBounder } from '../../../src/pruning/bounds/systemBounder.ts';
import { regionsOf } from '../../fixtures/regions.ts';

const pool = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Hf', 'Mn', 'Mo', 'Nb', 'Ni', 'Re', 'Ti', 'V', 'W', 'Zr'];

const of = (id: string): Expression => quantities.find((one) => one.id === id)!.formula;
const enthalpy = of('mixingEnthalpy');
const radius = linear('metallicRadius');
const spread = squareRoot(variance('metallicRadius'));

/** Every way in which a demand is taken back, among them those that turn it round and those with signs that vary. */
const shapes: Record<string, Expression> = {
  'a root taken from a number': minus(constant(5), spread),
  'a root over a sum, turned round': times(constant(-3), divide(spread, radius)),
  'a root of a sum with a number': squareRoot(plus(constant(2), absolute(enthalpy))),
  'a sum over a negative one': divide(enthalpy, negate(radius)),
  'a sum over one that may be 0': divide(radius, absolute(enthalpy)),
  'a sum of either sign over one that may be 0': divide(plus(enthalpy, constant(3)), absolute(enthalpy)),
  'a sum over one of either sign': divide(radius, enthalpy),
  'a root over one of either sign': divide(spread, enthalpy),
  'an exponential': times(constant(2), exponential(divide(enthalpy, constant(10)))),
  'an exponential of few digits': exponential(times(constant(-5.2), radius)),
  'a product next to nothing': times(constant(1e-200), times(constant(1e-120), enthalpy)),
  'a quotient next to nothing': divide(times(constant(1e-160), enthalpy), times(constant(1e160), radius)),
  'a quotient by what is huge': divide(times(constant(1e-20), radius), times(constant(1e190), radius)),
  'a root over what is huge': divide(squareRoot(radius), times(constant(1e190), radius)),
  'the lesser one': lesser(enthalpy, constant(-5)),
  'the greater one': greater(enthalpy, constant(-5)),
  'the lesser of two sums': lesser(enthalpy, minus(of('mixingFreeEnergy'), constant(-20))),
  'the greater of two sums': greater(negate(enthalpy), times(constant(10), entropy())),
  'one or the other': choose(atMost(enthalpy, constant(-5)), spread, divide(entropy(), radius)),
  'the size of a sum': absolute(plus(enthalpy, constant(5))),
};

const names = [...quantities.map(({ id }) => id), ...Object.keys(shapes)];
const program = bind(
  [...quantities.map(({ formula }) => formula), ...Object.values(shapes)],
  factsFor(pool, { prices: demoPrices }),
  { grainSize: 30 },
);
const outputs = names.map((_, output) => output);

// The truth is the canonical evaluator; thresholds are its very values, and near them.
test('what follows from a limit over a box is met by every point that meets the limit', () => {
  const bounder = systemBounder(program, outputs, 6);
  const { evaluate } = evaluator(program);
  const [slopes, plain] = [new Float64Array(6), new Float64Array(6)];
  const values = new Float64Array(outputs.length);
  /** Points that the condition rules out, and that the affine function of the output by itself does. */
  const ruledOut = { byCondition: 0, byOutput: 0 };
  const byName = new Map(names.map((name) => [name, 0]));
  fc.assert(
    fc.property(
      regionsOf(pool.length, 2, [20, 50, 200]),
      fc.constantFrom(0, 0, 1e-12, -1e-12, 1e-6, -1e-6, 0.01, -0.01, 0.3, -0.3),
      fc.nat(),
      fc.constantFrom(1 as const, -1 as const),
      ({ members, total, box, points }, off, chosen, side) => {
        const all = points.map((point) => {
          evaluate(members, point, total, values);
          return Float64Array.from(values);
        });
        bounder.enter(members, total);
        bounder.bound(box);
        for (const output of outputs) {
          const at = all[chosen % points.length]![output]!;
          if (!Number.isFinite(at)) continue;
          const value = at + off * Math.max(1, Math.abs(at));
          const first = bounder.condition(output, side, value, slopes, 0);
          const ofOutput = side * (bounder.affine(output, side === 1, plain, 0) - value);
          for (const [place, point] of points.entries()) {
            let [sum, alone] = [first, ofOutput];
            for (const [element, parts] of point.entries()) {
              sum += slopes[element]! * (parts - box.low[element]!);
              alone += side * plain[element]! * (parts - box.low[element]!);
            }
            const meets = side * all[place]![output]! <= side * value;
            if (meets && !(sum <= 0)) {
              expect.fail(`${names[output]} ${all[place]![output]} against ${side} ${value}: ${sum}`);
            }
            if (sum > 0) {
              ruledOut.byCondition += 1;
              byName.set(names[output]!, byName.get(names[output]!)! + 1);
            }
            if (alone > 0) ruledOut.byOutput += 1;
          }
        }
      },
    ),
    { numRuns: 600 },
  );
  // A condition that rules out nothing would be right as well: it must do so for each, and more than the output's own bound.
  for (const [name, ruled] of byName) if (ruled < 20) expect.fail(`${name}: ${ruled}`);
  expect(ruledOut.byCondition).toBeGreaterThan(1.005 * ruledOut.byOutput);
}, 120_000);
