import { expect, test } from 'vitest';
import { elements, pairEnthalpy, pairRecords } from '../src/index.ts';

test('every pair of the 56 elements has a value, the same in either order', () => {
  let pairs = 0;
  for (const { symbol: a } of elements) {
    for (const { symbol: b } of elements) {
      const enthalpy = pairEnthalpy(a, b);
      expect(enthalpy, `${a}-${b}`).toBeTypeOf('number');
      expect(enthalpy).toBe(pairEnthalpy(b, a));
      if (a < b) pairs += 1;
    }
  }
  expect(pairs).toBe(1540);
  expect(pairRecords()).toHaveLength(1540);
});

test('an element mixes with itself for nothing; an unknown pair has no value', () => {
  expect(pairEnthalpy('Fe', 'Fe')).toBe(0);
  expect(pairEnthalpy('Fe', 'U')).toBeNull();
});

// The source prints whole numbers, but for germanium.
test('half numbers belong to germanium alone', () => {
  for (const { a, b, mixingEnthalpy } of pairRecords()) {
    expect(Math.abs(mixingEnthalpy % 1), `${a}-${b}`).toBe(a === 'Ge' || b === 'Ge' ? 0.5 : 0);
  }
});
