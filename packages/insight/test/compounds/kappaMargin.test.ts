import { parseAlloy } from '@tiegel/elements';
import { valuesOf } from '@tiegel/screening';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formationEnthalpy, kappaMargin, miedemaParameters } from '../../src/index.ts';
import { alloys, facts, turned, withoutPair, withValues } from '../fixtures/alloys.ts';

const metals = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Nb', 'Ni', 'Ti', 'V', 'Zr'];

// By hand: 0.4 T R ln 2 − (−22 − H_IM), H_IM the equimolar compound.
test('equimolar AlNi follows the definition', () => {
  const compound = formationEnthalpy(
    miedemaParameters('Al', facts)!,
    miedemaParameters('Ni', facts)!,
    0.5,
    'compound',
  );
  const expected = 0.4 * 1.5 * 8.314462618 * Math.log(2) - (-22 - compound);
  expect(kappaMargin(parseAlloy('AlNi'), facts, { annealTemperature: 1500 })).toBeCloseTo(expected, 10);
});

// κ₁ = ΔH_IM/ΔH below κ_cr = 1 − TΔS(1 − 0.6)/ΔH, as published (from memory), for ΔH < 0.
test('its sign is the published comparison of ratios', () => {
  fc.assert(
    fc.property(alloys(metals), (alloy) => {
      const { mixingEnthalpy, configurationalEntropy } = valuesOf(alloy, facts) as Record<string, number>;
      const margin = kappaMargin(alloy, facts, { annealTemperature: 1273.15 })!;
      if (mixingEnthalpy! >= -0.5 || Math.abs(margin) < 1e-9) return;
      const symbols = Object.keys(alloy);
      const total = Object.values(alloy).reduce((sum, amount) => sum + amount, 0);
      let compounds = 0;
      for (const [at, a] of symbols.entries()) {
        for (const b of symbols.slice(0, at)) {
          const [one, other] = [miedemaParameters(a, facts)!, miedemaParameters(b, facts)!];
          compounds +=
            (4 * formationEnthalpy(one, other, 0.5, 'compound') * alloy[a]! * alloy[b]!) / total ** 2;
        }
      }
      const critical = 1 - (0.4 * 1273.15 * configurationalEntropy!) / 1000 / mixingEnthalpy!;
      expect(margin > 0).toBe(compounds / mixingEnthalpy! < critical);
    }),
  );
});

test('one solution is expected of CoCrFeMnNi and not of AlCoCrFeNi', () => {
  expect(kappaMargin(parseAlloy('CoCrFeMnNi'), facts)).toBeGreaterThan(0);
  expect(kappaMargin(parseAlloy('AlCoCrFeNi'), facts)).toBeLessThan(0);
});

test('the order of writing changes nothing', () => {
  fc.assert(
    fc.property(alloys(), (alloy) => {
      expect(kappaMargin(turned(alloy), facts)).toBe(kappaMargin(alloy, facts));
    }),
  );
});

test('a pure element and an alloy with a gap in its data have none', () => {
  expect(kappaMargin(parseAlloy('Ni'), facts)).toBeNull();
  expect(kappaMargin(parseAlloy('AlNi'), withoutPair('Al', 'Ni'))).toBeNull();
  expect(kappaMargin(parseAlloy('AlNi'), withValues('miedemaPotential', { Ni: null }))).toBeNull();
});
