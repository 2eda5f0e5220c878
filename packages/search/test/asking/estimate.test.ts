import { demoPrices } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import { estimates } from '../../src/asking/estimate.ts';
import { question } from '../fixtures/questions.ts';

const checked = (change = {}) => checkSearch(question(change), { prices: demoPrices }, 1e9);

test('a kind of question is measured once; which elements and bounds it has does not matter', () => {
  const { pointsPerSecond } = estimates();
  const rate = pointsPerSecond(checked());
  expect(rate).toBeGreaterThan(0);
  const pool = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Ni'];
  expect(pointsPerSecond(checked({ elements: { pool } }))).toBe(rate);
  expect(pointsPerSecond(checked({ fractions: { step: 5, min: 10, max: 40 } }))).toBe(rate);
  expect(pointsPerSecond(checked({ components: 3 }))).not.toBe(rate);
});

test('what a search took tells more than the measurement, unless it was short', () => {
  const { pointsPerSecond, learn } = estimates();
  const { specification } = checked().plan;
  const rate = pointsPerSecond(checked());
  learn(specification, 1000, 0.01);
  expect(pointsPerSecond(checked())).toBe(rate);
  learn(specification, 3e6, 2);
  expect(pointsPerSecond(checked())).toBe(1.5e6);
});

test('to cut a short search into chunks a rough rate does, which no estimate is made of', () => {
  const { pointsPerSecond, roughPointsPerSecond, learn } = estimates();
  const short = checked();
  expect(roughPointsPerSecond(short, 1)).toBeGreaterThan(0);
  const rate = pointsPerSecond(short);
  expect(roughPointsPerSecond(short, 1)).toBe(rate);
  learn(short.plan.specification, 3e6, 2);
  expect(roughPointsPerSecond(short, 1)).toBe(1.5e6);
  // Points enough for any rate to be too low: the exact one is measured, and kept.
  const long = { ...checked({ components: 3 }), points: 1e15 };
  expect(roughPointsPerSecond(long, 1)).toBe(pointsPerSecond(long));
});
