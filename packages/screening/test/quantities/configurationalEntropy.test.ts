import { expect, test } from 'vitest';
import { valueFor } from '../../src/index.ts';

// Yeh et al., Adv. Eng. Mater. 6 (2004) 299: five equal shares have 1.61 R (from memory), R = 8.314 J/(mol K).
test('five equal shares have 1.61 R, to half of the last printed digit', () => {
  expect(Math.abs(valueFor('configurationalEntropy', 'CoCrFeMnNi')! / 8.314 - 1.61)).toBeLessThanOrEqual(
    0.005,
  );
});
// Closed form of two shares: −R (c ln c + (1 − c) ln(1 − c)).
test('two shares follow the closed form', () => {
  const closed = -8.314462618 * (0.2 * Math.log(0.2) + 0.8 * Math.log(0.8));
  expect(valueFor('configurationalEntropy', 'Al20Ni80')).toBeCloseTo(closed, 12);
});
test('a single element has none, exactly', () => {
  expect(valueFor('configurationalEntropy', 'Ni')).toBe(0);
});
test('no data are needed', () => {
  const facts = { symbols: ['Al', 'Ni'], columns: {}, pairs: {} };
  expect(valueFor('configurationalEntropy', 'AlNi', facts)).toBeCloseTo(8.314462618 * Math.LN2, 12);
});
