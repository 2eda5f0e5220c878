import { parseAlloy } from '@tiegel/elements';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { missingFor, valuesOf } from '../../src/index.ts';
import { factsWith, without } from '../fixtures/elements.ts';
import { random } from '../fixtures/random.ts';

const facts = factsWith();
const strength = (alloy: string, conditions: Record<string, number> = {}, data = facts) =>
  valuesOf(parseAlloy(alloy), data, ['yieldStrengthBcc'], conditions).yieldStrengthBcc!;

// This project's own calculation by another program, as printed (four digits), at 293 and 1273 K.
test.for([
  ['NbMoTaW', 930.6, 357.3],
  ['NbMoTaVW', 1412, 590.0],
  ['HfNbTaTiZr', 1015, 346.5],
] as const)('%s has the worked values', ([alloy, cold, hot]) => {
  expect(Number(strength(alloy, { serviceTemperature: 293 }).toPrecision(4))).toBe(cold);
  expect(Number(strength(alloy, { serviceTemperature: 1273 }).toPrecision(4))).toBe(hot);
});

// Senkov et al., Intermetallics 18 (2010) 1758 and 19 (2011) 698; J. Alloys Compd. 509 (2011) 6043
// (from memory), compression at room temperature, MPa.
test.for([
  ['NbMoTaW', 1058],
  ['NbMoTaVW', 1246],
  ['HfNbTaTiZr', 929],
] as const)('%s comes within 15 %% of the measured %d MPa', ([alloy, measured]) => {
  expect(Math.abs(strength(alloy) / measured - 1)).toBeLessThan(0.15);
});

test('the grain size does not count', () => {
  expect(strength('NbMoTaW', { grainSize: 1 })).toBe(strength('NbMoTaW'));
});

describe('has no value', () => {
  test('above 0.9 of the melting temperature, but just below', () => {
    // (2750 + 2895)/2 K by the CRC melting points of Nb and Mo, 0.9 of it 2540.25 K
    expect(strength('MoNb', { serviceTemperature: 2540 })).toBeGreaterThan(0);
    expect(strength('MoNb', { serviceTemperature: 2541 })).toBeNull();
  });
  test('without a modulus or a density, and what lacks is named', () => {
    for (const column of ['shearModulus', 'bulkModulus', 'density']) {
      const lacking = without(column, 'Nb');
      expect(strength('NbMo', {}, lacking)).toBeNull();
      expect(missingFor('yieldStrengthBcc', { Mo: 1, Nb: 1 }, lacking)).toEqual([
        { element: 'Nb', value: column },
      ]);
    }
  });
});

test('a pure element has none to speak of: 0', () => {
  expect(strength('W')).toBe(0);
});

test('falls with temperature', () => {
  const refractory = ['Cr', 'Hf', 'Mo', 'Nb', 'Ta', 'Ti', 'V', 'W', 'Zr'];
  fc.assert(
    fc.property(fc.integer(), fc.double({ min: 4, max: 1600, noNaN: true }), (seed, kelvin) => {
      const source = random(seed);
      const members = source.some(refractory, source.whole(2, 5));
      const alloy = members.map((symbol) => `${symbol}${source.whole(1, 40)}`).join('');
      const [cool, warm] = [kelvin, kelvin * 1.01].map((serviceTemperature) =>
        strength(alloy, { serviceTemperature }),
      );
      expect(warm).toBeLessThan(cool!);
    }),
  );
});
