import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  EXPONENTIAL_ERROR,
  emitExponential,
  emitLogarithm,
  emitPowerOfTwo,
  LARGEST_EXPONENT,
  LARGEST_POWER_OF_TWO,
  LOGARITHM_ERROR,
  POWER_OF_TWO_ERROR,
} from '../../src/kernel/approximate.ts';
import { type Code, functionCode, moduleOf } from '../../src/kernel/emit.ts';
import { webAssembly } from '../../src/kernel/webAssembly.ts';

/** A function of two numbers at once, from the code that replaces the vector on the stack. */
function compiled(emit: (code: Code) => void): (values: [number, number]) => [number, number] {
  const numbersAt = 64;
  const code = functionCode(numbersAt);
  code.i32(0).i32(0).access('v128.load', 0);
  emit(code);
  code.access('v128.store', 16);
  const { bytes, numbers } = moduleOf(code);
  const memory = new webAssembly.Memory({ initial: 1 });
  const doubles = new Float64Array(memory.buffer);
  for (const [at, value] of numbers.entries())
    doubles.fill(value, numbersAt / 8 + 2 * at, numbersAt / 8 + 2 * at + 2);
  const { exports } = new webAssembly.Instance(new webAssembly.Module(bytes), { host: { memory } });
  return ([first, second]) => {
    doubles[0] = first;
    doubles[1] = second;
    exports.sweep!();
    return [doubles[2]!, doubles[3]!];
  };
}

// Math.exp and Math.log of the runtime are the outside values, themselves right to about 2e-16.
test('exp is within its stated relative error over its whole range', () => {
  const exponentials = compiled(emitExponential);
  const argument = fc.double({ min: -LARGEST_EXPONENT, max: LARGEST_EXPONENT, noNaN: true });
  fc.assert(
    fc.property(argument, argument, (first, second) => {
      const found = exponentials([first, second]);
      for (const [at, x] of [first, second].entries()) {
        expect(Math.abs(found[at]! / Math.exp(x) - 1)).toBeLessThanOrEqual(EXPONENTIAL_ERROR);
      }
    }),
    { numRuns: 3000 },
  );
});

test('exp is within its stated relative error where its polynomial is worst, at half steps of ln 2', () => {
  const exponentials = compiled(emitExponential);
  for (let step = -900; step < 900; step += 1) {
    const x = (step + 0.5) * Math.LN2;
    const [below, above] = exponentials([x * (1 - 1e-15), x * (1 + 1e-15)]);
    expect(Math.abs(below / Math.exp(x) - 1)).toBeLessThanOrEqual(EXPONENTIAL_ERROR + 2e-12);
    expect(Math.abs(above / Math.exp(x) - 1)).toBeLessThanOrEqual(EXPONENTIAL_ERROR + 2e-12);
  }
});

// 2 ** x of the runtime is the outside value.
test('powers of two are within their stated relative error over their whole range, half steps included', () => {
  const powers = compiled(emitPowerOfTwo);
  const range = { min: -LARGEST_POWER_OF_TWO, max: LARGEST_POWER_OF_TWO };
  const argument = fc.oneof(
    fc.double({ ...range, noNaN: true }),
    fc.integer(range),
    fc.integer({ min: -990, max: 990 }).map((step) => step + 0.5),
  );
  fc.assert(
    fc.property(argument, argument, (first, second) => {
      const found = powers([first, second]);
      for (const [at, x] of [first, second].entries()) {
        expect(Math.abs(found[at]! / 2 ** x - 1)).toBeLessThanOrEqual(POWER_OF_TWO_ERROR);
      }
    }),
    { numRuns: 3000 },
  );
});

test('ln is within its stated absolute error and a rounding, near 1 and near the edges of its steps too', () => {
  const logarithms = compiled(emitLogarithm);
  const argument = fc.oneof(
    fc.double({ min: 1e-300, max: 1e300, noNaN: true }),
    fc.double({ min: 0.5, max: 2, noNaN: true }),
    fc.integer({ min: -900, max: 900 }).map((power) => Math.SQRT1_2 * 2 ** power),
  );
  fc.assert(
    fc.property(argument, argument, (first, second) => {
      const found = logarithms([first, second]);
      for (const [at, x] of [first, second].entries()) {
        const error = LOGARITHM_ERROR + 2 ** -51 * Math.abs(Math.log(x));
        expect(Math.abs(found[at]! - Math.log(x))).toBeLessThanOrEqual(error);
      }
    }),
    { numRuns: 3000 },
  );
});
