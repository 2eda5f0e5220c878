import { expect, test } from 'vitest';
import { entropyScale } from '../../src/alloy/entropy/entropyScale.ts';

// R ln 5 with R = 8.314462618 J/(mol K).
test('five equal shares stand above every alloy in daily use, at R ln 5', () => {
  const scale = entropyScale({ Co: 20, Cr: 20, Fe: 20, Mn: 20, Ni: 20 });
  expect(scale.at(-1)!.name).toBeNull();
  expect(scale.at(-1)!.entropy).toBeCloseTo(8.314462618 * Math.log(5), 9);
  expect(scale.at(-1)!.effectiveElements).toBeCloseTo(5, 9);
  expect(scale.length).toBeGreaterThan(10);
  const entropies = scale.map(({ entropy }) => entropy);
  expect(entropies).toEqual(entropies.toSorted((a, b) => a - b));
});
