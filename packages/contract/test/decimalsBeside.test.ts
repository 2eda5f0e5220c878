import fc from 'fast-check';
import { expect, test } from 'vitest';
import { decimalsBeside } from '../src/index.ts';

test('a value gets more decimals only where the printed one would lie on the border', () => {
  expect(decimalsBeside(4.52, 10, 1)).toBe(1);
  expect(decimalsBeside(9.97, 10, 1)).toBe(2);
  expect(decimalsBeside(10.0004, 10, 0)).toBe(4);
  expect(decimalsBeside(22.5, 22, 0)).toBe(0);
  expect(decimalsBeside(22.4, 22, 0)).toBe(1);
  expect(decimalsBeside(-9.97, -10, 1)).toBe(2);
});

test('on the border, or nearer to it than anybody prints, the usual decimals do', () => {
  expect(decimalsBeside(10, 10, 1)).toBe(1);
  expect(decimalsBeside(10 + 1e-9, 10, 1)).toBe(1);
});

test('what is printed lies on the side of the value', () => {
  fc.assert(
    fc.property(fc.double({ min: 8, max: 12, noNaN: true }), (value) => {
      fc.pre(Math.abs(value - 10) > 1e-6);
      const printed = Number(value.toFixed(decimalsBeside(value, 10, 1)));
      expect(Math.sign(printed - 10)).toBe(Math.sign(value - 10));
    }),
  );
});
