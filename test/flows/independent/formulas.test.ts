import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { formulas } from './formulas.ts';
import { referenceData } from './referenceData.ts';

/** Descriptors of the file of worked values, with the factor from its unit to that of the formula. */
const descriptors: Record<string, string> = {
  dS: 'configurationalEntropy',
  dH: 'mixingEnthalpy',
  delta: 'sizeMismatch',
  Tm: 'meltingTemperature',
  Omega: 'omega',
  VEC: 'valenceElectronConcentration',
  dChi: 'electronegativitySpread',
  Lambda: 'lambda',
};

/** Rows that disagree because the paper used other radii, or a sample off the nominal composition: worked-values.md. */
const explained = new Set(['AlCoCrCuFeNi delta', 'ZrHfTiCuNi delta', 'HfNbTaTiZr delta']);

const data = referenceData();
const [, ...lines] = readFileSync(new URL('../../fixtures/worked-values.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n');
const rows = lines
  .map((line) => line.split(','))
  .filter(([, , descriptor]) => descriptor! in descriptors)
  .filter(([alloy, , descriptor]) => !explained.has(`${alloy} ${descriptor}`));

// Values and tolerances as printed; the source of each stands in its row of the file.
test.each(rows)(
  '%s (%s): %s %s as published',
  (_alloy, composition, descriptor, _unit, published, tolerance) => {
    const shares = composition!.split(' ').map((share): [string, number] => {
      const [, symbol, amount] = /^([A-Z][a-z]?)([\d.]+)$/.exec(share)!;
      return [symbol!, Number(amount)];
    });
    const total = shares.reduce((sum, [, amount]) => sum + amount, 0);
    const system = {
      elements: shares.map(([symbol]) => data.elements.get(symbol)!),
      enthalpy: shares.map(([a]) => shares.map(([b]) => (a === b ? 0 : data.enthalpies.get(`${a}-${b}`)!))),
    };
    const value = formulas[descriptors[descriptor!]!]!(
      shares.map(([, amount]) => amount / total),
      system,
    )!;
    // The file's compositions are rounded to four digits, which moves a value by up to 1e-4 of itself.
    const slack = Number(tolerance) + 1e-4 * Math.abs(value);
    expect(Math.abs(value - Number(published))).toBeLessThanOrEqual(slack);
  },
);

test('there are worked values to compare with', () => {
  expect(rows.length).toBeGreaterThan(40);
});
