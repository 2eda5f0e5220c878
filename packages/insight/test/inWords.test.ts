import { expect, test } from 'vitest';
import { elementsInWords, kelvinInWords, numberInWords, percentInWords } from '../src/inWords.ts';

test('names are joined as in a sentence', () => {
  expect(elementsInWords([])).toBe('');
  expect(elementsInWords(['Cu'])).toBe('copper');
  expect(elementsInWords(['Hf', 'Zr'])).toBe('hafnium and zirconium');
  expect(elementsInWords(['Co', 'Fe', 'Ni'])).toBe('cobalt, iron and nickel');
});

test('a temperature has three digits and no exponent', () => {
  expect([1684.4, 66.896, 962.18, 3127.1, 12000].map(kelvinInWords)).toEqual([
    '1680 K',
    '66.9 K',
    '962 K',
    '3130 K',
    '12000 K',
  ]);
});

test('a negative number has the minus sign of print', () => {
  expect(numberInWords(-0.456, 2)).toBe('−0.46');
});

test('a share is told in whole per cent', () => {
  expect([0, 0.374, 0.996].map(percentInWords)).toEqual(['0 %', '37 %', '100 %']);
});
