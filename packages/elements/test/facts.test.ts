import { factsSchema } from '@tiegel/contract';
import { describe, expect, test } from 'vitest';
import { columns, demoPrices, elementNumber, factsFor, missingIn, symbols } from '../src/index.ts';
import { codesFrom } from './faultsFrom.ts';

describe('facts', () => {
  test('hold each symbol once, alphabetical, and follow that order', () => {
    const facts = factsFor(['Ni', 'Al', 'Ni', 'Fe']);
    expect(facts.symbols).toEqual(['Al', 'Fe', 'Ni']);
    expect(facts.columns.valenceElectrons).toEqual([3, 8, 10]);
    expect(facts.pairs.mixingEnthalpy).toEqual([
      [0, -11, -22],
      [-11, 0, -2],
      [-22, -2, 0],
    ]);
  });

  test('of all elements fit the contract: every number column, symmetric pairs, zero diagonal', () => {
    const facts = factsFor(symbols, { prices: demoPrices });
    expect(factsSchema.parse(facts)).toEqual(facts);
    const numbers = columns.filter(({ holds }) => holds === 'numbers').map(({ id }) => id);
    expect(Object.keys(facts.columns).sort()).toEqual([...numbers, 'price'].sort());
    const matrix = facts.pairs.mixingEnthalpy!;
    matrix.forEach((row, a) => {
      expect(row[a]).toBe(0);
      for (let b = 0; b < row.length; b++) expect(row[b]).toBe(matrix[b]![a]);
    });
    for (const id of numbers) {
      expect(facts.columns[id]).toEqual(facts.symbols.map((symbol) => elementNumber(symbol, id)));
    }
  });

  test('have prices only with a list, null where the list has none', () => {
    expect(factsFor(['Al', 'Ni']).columns.price).toBeUndefined();
    const { Ni: _, ...rest } = demoPrices.prices;
    const facts = factsFor(['Al', 'Ni'], { prices: { ...demoPrices, prices: rest } });
    expect(facts.columns.price).toEqual([demoPrices.prices.Al!.pricePerKilogram, null]);
    expect(missingIn(facts, 'price', ['Al', 'Ni'])).toEqual(['Ni']);
  });

  test('are refused for symbols without data, each named', () => {
    expect(codesFrom(() => factsFor(['Al', 'Xx', 'U']))).toEqual([
      'element/unknown /1',
      'element/no-data /2',
    ]);
  });

  test('are new arrays every time: nobody can spoil the data', () => {
    factsFor(['Al']).columns.density![0] = 1;
    expect(factsFor(['Al']).columns.density).toEqual([2.7]);
  });
});

describe('what is missing', () => {
  const facts = factsFor(['Al', 'C', 'La', 'Lu']);
  test('is named by symbol', () => {
    expect(missingIn(facts, 'allenElectronegativity', facts.symbols)).toEqual(['La']);
    expect(missingIn(facts, 'meltingTemperature', ['Al', 'C'])).toEqual(['C']);
    expect(missingIn(facts, 'density', facts.symbols)).toEqual([]);
  });
  test('is everything where the column does not exist', () => {
    expect(missingIn(facts, 'price', ['Al', 'C'])).toEqual(['Al', 'C']);
  });
  test('is named by pair in a pair column', () => {
    const spoilt = structuredClone(facts);
    spoilt.pairs.mixingEnthalpy![0]![2] = null;
    expect(missingIn(spoilt, 'mixingEnthalpy', facts.symbols)).toEqual(['Al-La']);
    expect(missingIn(facts, 'mixingEnthalpy', facts.symbols)).toEqual([]);
  });
});
