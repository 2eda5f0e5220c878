import fc from 'fast-check';
import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { factsWith, withoutPair } from '../fixtures/elements.ts';
import { random } from '../fixtures/random.ts';

const facts = factsWith();

// Co–Cr −4, Co–Ni 0, Cr–Ni −7 kJ/mol (Takeuchi & Inoue 2005): with equal weights four times that has
// the mean −44/3 and the mean square 1040/3.
test('CoCrNi has the standard deviation of its three pairs', () => {
  expect(valueFor('pairEnthalpyScatter', 'CoCrNi')).toBeCloseTo(Math.sqrt(1040 / 3 - (44 / 3) ** 2), 10);
});
// The definition once more, about the mean instead of by the mean square.
test('follows its definition for any amounts', () => {
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      const source = random(seed);
      const members = source.some([...facts.symbols.keys()], source.whole(3, 6));
      const amounts = members.map(() => source.whole(1, 60));
      const pairs = members.flatMap((i, a) =>
        members.slice(a + 1).map((j, b) => ({
          weight: amounts[a]! * amounts[a + 1 + b]!,
          value: 4 * facts.pairs.mixingEnthalpy![i]![j]!,
        })),
      );
      const whole = pairs.reduce((sum, { weight }) => sum + weight, 0);
      const mean = pairs.reduce((sum, { weight, value }) => sum + weight * value, 0) / whole;
      const square = pairs.reduce((sum, { weight, value }) => sum + weight * (value - mean) ** 2, 0) / whole;
      const alloy = Object.fromEntries(members.map((i, at) => [facts.symbols[i]!, amounts[at]!]));
      const scale = Math.max(1, Math.abs(mean));
      expect(Math.abs(valueFor('pairEnthalpyScatter', alloy)! - Math.sqrt(square))).toBeLessThan(
        1e-6 * scale,
      );
    }),
  );
});
test('two elements have none, exactly, whatever their shares', () => {
  for (let share = 1; share < 100; share++) {
    expect(valueFor('pairEnthalpyScatter', { Al: share, Ni: 100 - share })).toBe(0);
  }
});
test('a pure element has no value', () => {
  expect(valueFor('pairEnthalpyScatter', 'Ni')).toBeNull();
});
test('a pair without an enthalpy gives null and is named', () => {
  const lacking = withoutPair('Cr', 'Ni');
  expect(valueFor('pairEnthalpyScatter', 'AlCrNi', lacking)).toBeNull();
  expect(missingFor('pairEnthalpyScatter', { Al: 1, Cr: 1, Ni: 1 }, lacking)).toEqual([
    { element: 'Cr-Ni', value: 'mixingEnthalpy' },
  ]);
});
