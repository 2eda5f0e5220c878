import { expect, test } from 'vitest';
import {
  elementsInWords,
  kelvinInWords,
  numberInWords,
  percentInWords,
  setKelvinInWords,
} from '../src/inWords.ts';

test('names are joined as in a sentence', () => {
  expect(elementsInWords([])).toBe('');
  expect(elementsInWords(['Cu'])).toBe('copper');
  expect(elementsInWords(['Hf', 'Zr'])).toBe('hafnium and zirconium');
  expect(elementsInWords(['Co', 'Fe', 'Ni'])).toBe('cobalt, iron and nickel');
});

test('a number has the minus sign of print, and none where it is rounded to nothing', () => {
  expect([-4.16, -0.004, 0, -0].map((value) => numberInWords(value, 2))).toEqual([
    '−4.16',
    '0.00',
    '0.00',
    '0.00',
  ]);
});

test('a temperature has three digits and no exponent', () => {
  expect([1684.4, 66.896, 962.18, 3127.1, 12000].map((kelvin) => kelvinInWords(kelvin))).toEqual([
    '1680 K',
    '66.9 K',
    '962 K',
    '3130 K',
    '12000 K',
  ]);
});

test('two temperatures that are compared have as many digits as it takes to tell them apart', () => {
  expect([kelvinInWords(1274.2, 1273.15), kelvinInWords(1273.15, 1274.2)]).toEqual(['1274 K', '1273 K']);
  expect([kelvinInWords(1914.6, 1905.5), kelvinInWords(1905.5, 1914.6)]).toEqual(['1915 K', '1906 K']);
  expect([kelvinInWords(1684.4, 1273.15), kelvinInWords(1684.4, 1684.4)]).toEqual(['1680 K', '1680 K']);
});

test('a temperature that somebody set is told to the kelvin', () => {
  expect(setKelvinInWords(1273.15)).toBe('1273 K');
});

test('a negative number has the minus sign of print', () => {
  expect(numberInWords(-0.456, 2)).toBe('−0.46');
});

test('a share is told in whole per cent', () => {
  expect([0, 0.374, 0.996].map((share) => percentInWords(share))).toEqual(['0 %', '37 %', '100 %']);
  expect(percentInWords(0.2249, 1)).toBe('22.5 %');
});
