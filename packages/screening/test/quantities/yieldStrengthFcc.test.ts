import { parseAlloy } from '@tiegel/elements';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { missingFor, valuesOf } from '../../src/index.ts';
import { factsWith, without } from '../fixtures/elements.ts';
import { random } from '../fixtures/random.ts';

const facts = factsWith();
const strength = (alloy: string, conditions: Record<string, number> = {}, data = facts) =>
  valuesOf(parseAlloy(alloy), data, ['yieldStrengthFcc'], conditions).yieldStrengthFcc!;

// This project's own calculation by another program, as printed (four digits), at 293 and 1273 K.
test.for([
  ['CoCrFeMnNi', 92.16, 10.36],
  ['CoCrFeNi', 85.23, 9.008],
  ['FeNi', 60.58, 4.467],
] as const)('%s has the worked values', ([alloy, cold, hot]) => {
  expect(Number(strength(alloy, { serviceTemperature: 293 }).toPrecision(4))).toBe(cold);
  expect(Number(strength(alloy, { serviceTemperature: 1273 }).toPrecision(4))).toBe(hot);
});

// Friction part of CoCrFeMnNi at 293 K: about 125 MPa (Otto et al., Acta Mater. 61 (2013) 5743, from memory).
test('CoCrFeMnNi comes within 45 % of the published friction stress', () => {
  expect(Math.abs(strength('CoCrFeMnNi') / 125 - 1)).toBeLessThan(0.45);
});

describe('with a grain size', () => {
  test('494 MPa/√(d/µm) is added', () => {
    const alone = strength('CoCrFeMnNi');
    expect(strength('CoCrFeMnNi', { grainSize: 4 }) - alone).toBeCloseTo(247, 10);
    expect(strength('CoCrFeMnNi', { grainSize: 10_000 }) - alone).toBeCloseTo(4.94, 10);
  });
  test('there is a value from 77 to 673 K, the ends included, and none outside', () => {
    const at = (serviceTemperature: number) => strength('CoCrFeMnNi', { serviceTemperature, grainSize: 10 });
    for (const kelvin of [77, 300, 673]) expect(at(kelvin)).toBeGreaterThan(156);
    for (const kelvin of [76.9, 673.1, 1273]) expect(at(kelvin)).toBeNull();
  });
});

describe('has no value', () => {
  test('with more than 5 at.% aluminium, but at 5', () => {
    expect(strength('Al5Co35Fe30Ni30')).toBeGreaterThan(0);
    expect(strength('Al5.1Co34.9Fe30Ni30')).toBeNull();
  });
  test('with a trace of silicon or boron', () => {
    expect(strength('Co50Ni49.9Si0.1')).toBeNull();
    expect(strength('Co50Ni49.9B0.1')).toBeNull();
  });
  test('above 0.9 of the melting temperature, but at it', () => {
    // (1768 + 1728)/2 K by the CRC melting points of Co and Ni, 0.9 of it 1573.2 K
    expect(strength('CoNi', { serviceTemperature: 1573.2 })).toBeGreaterThan(0);
    expect(strength('CoNi', { serviceTemperature: 1573.3 })).toBeNull();
  });
  test('without a modulus or a density, and what lacks is named', () => {
    for (const column of ['shearModulus', 'bulkModulus', 'density']) {
      const lacking = without(column, 'Cr');
      expect(strength('CrNi', {}, lacking)).toBeNull();
      expect(missingFor('yieldStrengthFcc', { Cr: 1, Ni: 1 }, lacking)).toEqual([
        { element: 'Cr', value: column },
      ]);
    }
  });
});

test('a pure element has none to speak of: 0', () => {
  expect(strength('Ni')).toBe(0);
});

test('falls with temperature', () => {
  const solvents = ['Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Ni', 'Pd', 'V'];
  fc.assert(
    fc.property(fc.integer(), fc.double({ min: 4, max: 1200, noNaN: true }), (seed, kelvin) => {
      const source = random(seed);
      const members = source.some(solvents, source.whole(2, 5));
      const alloy = members.map((symbol) => `${symbol}${source.whole(1, 40)}`).join('');
      const [cool, warm] = [kelvin, kelvin * 1.01].map((serviceTemperature) =>
        strength(alloy, { serviceTemperature }),
      );
      expect(warm).toBeLessThan(cool!);
    }),
  );
});
