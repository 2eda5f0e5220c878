import { demoPrices } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import { isOneChunk, pointsOfShortChunk } from '../../src/asking/start.ts';
import { question } from '../fixtures/questions.ts';

const asked = (change = {}) => checkSearch(question(change), { prices: demoPrices }, 1e9).plan.specification;

test('a small search falls to one worker whole, a larger one to all of them; a still larger one is worth a measurement', () => {
  expect(pointsOfShortChunk(30e6, 1, asked())).toBe(30e6);
  expect(pointsOfShortChunk(30e6, 4, asked())).toBe(30e6);
  expect(pointsOfShortChunk(60e6, 2, asked())).toBe(30e6);
  expect(pointsOfShortChunk(60e6, 1, asked())).toBeNull();
  // Before the first worker is there.
  expect(pointsOfShortChunk(30e6, 0, asked())).toBe(30e6);
});

test('where a point takes long, a small search is measured as well', () => {
  const front = [
    { quantity: 'density', prefer: 'low' },
    { quantity: 'omega', prefer: 'high' },
  ];
  expect(pointsOfShortChunk(1e6, 1, asked({ front }))).toBeNull();
  expect(pointsOfShortChunk(1e6, 1, asked({ fractions: 'equimolar' }))).toBeNull();
});

test('what is one chunk has one worker, unless so many are kept that it is cut', () => {
  expect(isOneChunk(30e6, 4, asked())).toBe(true);
  expect(isOneChunk(60e6, 2, asked())).toBe(false);
  expect(isOneChunk(30e6, 4, asked({ keep: 1_000_000 }))).toBe(false);
});
