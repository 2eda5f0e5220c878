import { expect, test } from 'vitest';
import { missingInWords } from '../../src/index.ts';

test('values are named in words, elements and pairs by symbol', () => {
  expect(
    missingInWords([
      { element: 'C', value: 'shearModulus' },
      { element: 'Ga', value: 'shearModulus' },
      { element: 'Li', value: 'shearModulus' },
      { element: 'Cr-Ni', value: 'mixingEnthalpy' },
      { element: 'Ni', value: 'price' },
    ]),
  ).toBe('shear modulus of C, Ga and Li, pair mixing enthalpy of Cr-Ni, price of Ni');
});

test('nothing lacks: nothing said', () => {
  expect(missingInWords([])).toBe('');
});
