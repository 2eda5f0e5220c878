import { type CheckedData, disagreements, numberOf } from './checkedData.ts';

const noModuli = {
  Li: 'no shear modulus',
  C: 'no moduli',
  Ga: 'bulk modulus alone',
};

const unrelatedModuli = {
  ...noModuli,
  Yb: 'its source has E 11 % below what its own G and B give',
};

const otherDensities = {
  C: 'no moduli',
  Ce: 'soft before its volume collapse: the bulk modulus is of gamma cerium, the density that of the table of Miedema',
  Yb: 'Miedema takes the trivalent metal; ytterbium is divalent at room temperature',
};

/**
 * Two relations between columns of different sources: E = 9BG/(3B + G) of an isotropic body, within
 * 10 %; and Miedema's electron density, which he took from √(B/V) (B in GPa, V in cm3/mol give his
 * units within a few per cent), so that its cube root is (B/V)^(1/6), within 15 %.
 */
export function moduli({ elements }: CheckedData): string[] {
  const youngs = elements.map((element) => {
    const bulk = numberOf(element, 'bulkModulus');
    const shear = numberOf(element, 'shearModulus');
    const expected = (9 * bulk * shear) / (3 * bulk + shear);
    return { symbol: element.symbol, found: numberOf(element, 'youngsModulus'), expected };
  });
  const densities = elements.map((element) => {
    const volume = numberOf(element, 'atomicMass') / numberOf(element, 'density');
    const expected = (numberOf(element, 'bulkModulus') / volume) ** (1 / 6);
    return { symbol: element.symbol, found: numberOf(element, 'miedemaElectronDensity'), expected };
  });
  const missing = elements
    .filter(
      ({ symbol, youngsModulus: e, shearModulus: g, bulkModulus: b }) =>
        [e, g, b].includes(null) !== Object.hasOwn(noModuli, symbol),
    )
    .map(({ symbol }) => `${symbol}: has or lacks a modulus against the sources`);
  return [
    ...disagreements('youngsModulus', 0.1, youngs, unrelatedModuli),
    ...disagreements('miedemaElectronDensity', 0.15, densities, otherDensities),
    ...missing,
  ];
}
