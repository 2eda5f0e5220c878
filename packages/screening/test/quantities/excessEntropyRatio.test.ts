import { expect, test } from 'vitest';
import { missingFor, valueFor } from '../../src/index.ts';
import { factsWith, without, withoutPair } from '../fixtures/elements.ts';
import { hardSpheres } from '../fixtures/hardSpheres.ts';

const facts = factsWith();

// Ye et al., Scr. Mater. 104 (2015) 53 (equation from memory); no printed value is at hand. ΔS = R ln 5,
// ΔH −4.16 and −12.32 kJ/mol (Guo & Liu 2011, from memory), T_m from CRC melting points, S_σ apart from the package.
test.for([
  [{ Co: 1, Cr: 1, Fe: 1, Mn: 1, Ni: 1 }, 4.16, (1768 + 2180 + 1811 + 1519 + 1728) / 5],
  [{ Al: 1, Co: 1, Cr: 1, Fe: 1, Ni: 1 }, 12.32, (933.47 + 1768 + 2180 + 1811 + 1728) / 5],
] as const)('%o follows the definition', ([alloy, enthalpy, melting]) => {
  const left = 8.314462618 * Math.log(5) - (1000 * enthalpy) / melting;
  const closed = left / (8.314462618 * hardSpheres(alloy, facts));
  expect(valueFor('excessEntropyRatio', alloy)! / closed).toBeCloseTo(1, 9);
});
test('is negative where the enthalpy takes more than there is', () => {
  expect(valueFor('excessEntropyRatio', 'AlNi')).toBeLessThan(0);
});
test('equal radii, and a single element, stop at 1000', () => {
  const equal = { ...facts, columns: { ...facts.columns, metallicRadius: facts.symbols.map(() => 125.3) } };
  expect(valueFor('excessEntropyRatio', 'CoCrNi', equal)).toBe(1000);
  expect(valueFor('excessEntropyRatio', 'Ni')).toBe(1000);
  expect(valueFor('excessEntropyRatio', 'CoCrFeNi')).toBe(1000);
});
test('a missing radius, melting point or enthalpy gives null and is named', () => {
  expect(valueFor('excessEntropyRatio', 'NiCr', without('metallicRadius', 'Cr'))).toBeNull();
  expect(valueFor('excessEntropyRatio', 'NiCr', without('meltingTemperature', 'Cr'))).toBeNull();
  expect(valueFor('excessEntropyRatio', 'NiCr', withoutPair('Cr', 'Ni'))).toBeNull();
  expect(missingFor('excessEntropyRatio', { Cr: 1, Ni: 1 }, withoutPair('Cr', 'Ni'))).toEqual([
    { element: 'Cr-Ni', value: 'mixingEnthalpy' },
  ]);
});
