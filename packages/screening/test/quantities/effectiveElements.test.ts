import { expect, test } from 'vitest';
import { valueFor } from '../../src/index.ts';

// Definition of perplexity: n equal shares count as n.
test('n equal shares count as n', () => {
  for (const [alloy, n] of [
    ['Ni', 1],
    ['AlNi', 2],
    ['CoCrNi', 3],
    ['CoCrFeMnNi', 5],
  ] as const) {
    expect(valueFor('effectiveElements', alloy)! / n).toBeCloseTo(1, 14);
  }
});
// Closed form of two shares: exp of the entropy is c^(−c) (1 − c)^(−(1 − c)).
test('two shares follow the closed form', () => {
  expect(valueFor('effectiveElements', 'Al20Ni80')).toBeCloseTo(0.2 ** -0.2 * 0.8 ** -0.8, 13);
});
test('a trace hardly counts', () => {
  const two = valueFor('effectiveElements', 'AlNi')!;
  expect(valueFor('effectiveElements', { Al: 50, Ni: 50, Co: 1e-6 })! - two).toBeLessThan(1e-6);
});
test('a pure element counts as one, exactly', () => {
  expect(valueFor('effectiveElements', 'C')).toBe(1);
});
