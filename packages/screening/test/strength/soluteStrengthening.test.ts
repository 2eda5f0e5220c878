import { parseAlloy } from '@tiegel/elements';
import { describe, expect, test } from 'vitest';
import {
  type Composition,
  type Expression,
  formulaValue,
  parseUnit,
  sameUnit,
  unitOf,
} from '../../src/index.ts';
import { bcc, fcc } from '../../src/strength/lattices.ts';
import { soluteStrengthening } from '../../src/strength/soluteStrengthening.ts';
import { factsWith } from '../fixtures/elements.ts';

const facts = factsWith();
const at = (formula: Expression, composition: Composition, conditions: Record<string, number> = {}) =>
  formulaValue(formula, composition, facts, conditions)!;

const KJ_PER_MOL_IN_EV = 96.48533212;

// This project's own calculation by another program, as printed (four digits): τ₀ MPa, ΔE eV, and the
// yield strength at 293 and 1273 K in MPa, at 10⁻³ 1/s. Equations from memory of the papers named
// in soluteStrengthening.ts.
describe.for([
  ['CoCrFeMnNi', fcc, 65.61, 0.9937, 92.16, 10.36],
  ['CoCrFeNi', fcc, 62.03, 0.9637, 85.23, 9.008],
  ['FeNi', fcc, 50.12, 0.8185, 60.58, 4.467],
  ['NbMoTaW', bcc, 426.7, 2.56, 930.6, 357.3],
  ['NbMoTaVW', bcc, 628.3, 2.834, 1412, 590.0],
  ['HfNbTaTiZr', bcc, 485.2, 2.255, 1015, 346.5],
] as const)('%s', ([alloy, lattice, stress, barrier, cold, hot]) => {
  const model = soluteStrengthening(lattice);
  const composition = parseAlloy(alloy);

  test('agrees with the worked table to four digits', () => {
    const found = [
      [1000 * at(model.zeroTemperatureStress, composition), stress],
      [at(model.barrier, composition) / KJ_PER_MOL_IN_EV, barrier],
      [at(model.strength, composition, { serviceTemperature: 293 }), cold],
      [at(model.strength, composition, { serviceTemperature: 1273 }), hot],
    ];
    for (const [value, worked] of found) expect(Number(value!.toPrecision(4))).toBe(worked);
  });
});

test('a pure element has no solute strengthening, not even where the barrier would be 0/0', () => {
  const { strength } = soluteStrengthening(fcc);
  expect(at(strength, { Ni: 1 })).toBe(0);
  expect(at(strength, { Ni: 1 }, { strainRate: 1e4 })).toBe(0);
});

test('faster is stronger, up to the stress at 0 K', () => {
  const { strength, zeroTemperatureStress } = soluteStrengthening(bcc);
  const alloy = parseAlloy('HfNbTaTiZr');
  const rates = [1e-8, 1e-5, 1e-3, 1, 1e3, 1e4];
  const found = rates.map((strainRate) => at(strength, alloy, { strainRate }));
  expect(found).toEqual(found.toSorted((a, b) => a - b));
  expect(found.at(-1)).toBeCloseTo(3067 * at(zeroTemperatureStress, alloy), 9);
});

test('stress is in GPa, barrier in kJ/mol, strength in MPa', () => {
  const { strength, zeroTemperatureStress, barrier } = soluteStrengthening(fcc);
  expect(sameUnit(unitOf(zeroTemperatureStress), parseUnit('GPa'))).toBe(true);
  expect(sameUnit(unitOf(barrier), parseUnit('kJ/mol'))).toBe(true);
  expect(sameUnit(unitOf(strength), parseUnit('MPa'))).toBe(true);
});
