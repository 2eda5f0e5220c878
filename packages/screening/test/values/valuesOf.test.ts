import { describe, expect, test } from 'vitest';
import { quantities, screening, valueFor, valuesOf } from '../../src/index.ts';
import { factsWith } from '../fixtures/elements.ts';

const facts = factsWith();

describe('the values of a composition', () => {
  test('hold every quantity by its id', () => {
    const values = valuesOf({ Al: 50, Ni: 50 }, facts);
    expect(Object.keys(values)).toEqual(quantities.map(({ id }) => id));
  });

  test('are null where there is none, never NaN or infinite', () => {
    const { cost, costPerLitre, omega } = valuesOf({ Ni: 100 }, facts);
    expect([cost, costPerLitre, omega]).toEqual([null, null, null]);
  });

  test('are those asked for alone, in that order', () => {
    expect(Object.keys(valuesOf({ Ni: 100 }, facts, ['omega', 'density']))).toEqual(['omega', 'density']);
  });

  test('do not change with the total or with the order of writing', () => {
    const inPercent = valuesOf({ Al: 10, Co: 30, Ni: 60 }, facts);
    expect(
      valuesOf({ Ni: 6, Al: 1, Co: 3 }, facts, ['mixingEnthalpy', 'sizeMismatch', 'omega', 'lambda']),
    ).toEqual({
      mixingEnthalpy: inPercent.mixingEnthalpy,
      sizeMismatch: inPercent.sizeMismatch,
      omega: inPercent.omega,
      lambda: inPercent.lambda,
    });
  });

  test('take an amount of 0 as absent', () => {
    expect(valuesOf({ Al: 0, Ni: 100 }, facts)).toEqual(valuesOf({ Ni: 100 }, facts));
  });

  test('of amounts with decimals are those of the same grid point, exactly', () => {
    // 12.3 + 27.7 + 60 at.%: VEC 12.3·3 + 27.7·9 + 60·10 = 886.2 hundredths.
    const { valenceElectronConcentration } = valuesOf({ Al: 12.3, Co: 27.7, Ni: 60 }, facts);
    expect(valenceElectronConcentration).toBe(8.862);
  });

  test('come from a prepared screening as often as wanted', () => {
    const density = screening(facts, ['density']);
    expect(density({ Ni: 100 })).toEqual({ density: 8.9 });
    expect(density({ Al: 100 })).toEqual({ density: 2.7 });
  });

  test('of an alloy as text are those of its composition', () => {
    expect(valueFor('mixingEnthalpy', 'AlCoCrFeNi')).toBe(
      valueFor('mixingEnthalpy', { Al: 20, Co: 20, Cr: 20, Fe: 20, Ni: 20 }),
    );
  });

  test('refuse what is no composition, and say why', () => {
    expect(() => valuesOf({ Xx: 100 }, facts)).toThrow('The facts hold no element Xx.');
    expect(() => valuesOf({ Ni: -1 }, facts)).toThrow('Ni: -1 is no amount.');
    expect(() => valuesOf({ Ni: Number.NaN }, facts)).toThrow('Ni: NaN is no amount.');
    expect(() => valuesOf({ Ni: 0 }, facts)).toThrow('at least one element');
  });
});
