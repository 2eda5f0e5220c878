import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { without, withoutPair } from '../fixtures/elements.ts';

// Yang & Zhang, Mater. Chem. Phys. 132 (2012) 233, as quoted in the tests of a general-purpose
// library (hackingmaterials/matminer, commit 8ddb18c).
test('CuNi has 2.22 and AlCoCrCuFeNi about 5.06', () => {
  expect(Math.abs(valueFor('omega', 'CuNi')! - 2.22)).toBeLessThanOrEqual(0.005);
  expect(Math.abs(valueFor('omega', 'AlCoCrCuFeNi')! - 5.06)).toBeLessThanOrEqual(0.05);
});
// Closed form of two equal shares: T_m R ln 2 / |1000 H|; Al 933.47 K, Ni 1728 K, H −22 kJ/mol.
test('two equal shares follow the closed form', () => {
  const closed = (((933.47 + 1728) / 2) * 8.314462618 * Math.LN2) / 22_000;
  expect(valueFor('omega', 'AlNi')).toBeCloseTo(closed, 12);
});
test('elements that mix without enthalpy stop at 1000, and so does what comes near', () => {
  expect(valueFor('omega', 'FeMn')).toBe(1000);
  expect(valueFor('omega', { Cu: 0.001, Fe: 50, Mn: 49.999 })).toBe(1000);
});
test('a single element has no value', () => {
  expect(valueFor('omega', 'Ni')).toBeNull();
});
test('an element without a melting point or a pair without an enthalpy gives null and is named', () => {
  expect(valueFor('omega', 'NiCr', without('meltingTemperature', 'Cr'))).toBeNull();
  expect(valueFor('omega', 'NiCr', withoutPair('Cr', 'Ni'))).toBeNull();
  expect(missingFor('omega', { Cr: 1, Ni: 1 }, withoutPair('Cr', 'Ni'))).toEqual([
    { element: 'Cr-Ni', value: 'mixingEnthalpy' },
  ]);
});
