import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseNumber } from '../../src/numbers/parseNumber.ts';

const comma = { decimalSign: ',' } as const;
const point = { decimalSign: '.' } as const;

test.each([
  ['7.5', point, 7.5],
  ['7,5', point, 7.5],
  ['7,5', comma, 7.5],
  ['7.5', comma, 7.5],
  ['8.125', point, 8.125],
  ['8,125', comma, 8.125],
  ['0,125', point, 0.125],
  ['-15', point, -15],
  ['−15', point, -15],
  ['1e13', point, 1e13],
  [' 1 000 000 ', point, 1e6],
  ["1'000", point, 1000],
  ['1,000,000', point, 1e6],
  ['1.000.000', comma, 1e6],
  ['1,234.5', point, 1234.5],
  ['1.234,5', comma, 1234.5],
  ['.5', point, 0.5],
  ['5.', point, 5],
])('%s is read with %o', (text, options, value) => {
  expect(parseNumber(text, options)).toEqual({ value });
});

test('an empty field is nothing, not 0', () => {
  expect(parseNumber('', point)).toEqual({ value: null });
  expect(parseNumber('   ', point)).toEqual({ value: null });
});

test('one sign before three digits, which is not the decimal sign of the reader, is asked back', () => {
  expect(parseNumber('1,250', point)).toEqual({
    unclear: '“1,250” could mean 1250 or 1.25. Write one of these.',
  });
  expect(parseNumber('1.250', comma)).toEqual({
    unclear: '“1.250” could mean 1250 or 1,25. Write one of these.',
  });
});

test('where only whole numbers fit, it separates thousands', () => {
  expect(parseNumber('1,000', { ...point, whole: true })).toEqual({ value: 1000 });
});

test.each(['abc', '1.2.3', '1,2,3', '--5', '5 %', '1e', 'NaN', 'Infinity', '0x10', '1e999'])(
  '%s is not a number',
  (text) => {
    expect(parseNumber(text, point)).toEqual({
      unclear: `“${text}” is not a number. Write digits alone, as in 12.5.`,
    });
  },
);

test('every finite number comes back from how JavaScript prints it, with either sign', () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (drawn) => {
      const value = drawn + 0; // −0 prints as 0
      expect(parseNumber(String(value), point)).toEqual({ value });
      expect(parseNumber(String(value).replace('.', ','), comma)).toEqual({ value });
    }),
  );
});
