import { expect, test } from 'vitest';
import { type Asked, searchGroups } from '../../src/comparison/searchGroups.ts';
import type { SearchView } from '../../src/search/search.ts';

const search = {
  specification: {
    limits: [
      { quantity: 'density', max: 8 },
      { quantity: 'merit', min: 1 },
    ],
    lets: { merit: 'density / 4' },
    keptOnly: [{ quantity: 'hullDistance', max: 5 }],
  },
  moreQuantities: [
    { id: 'hullDistance', kind: 'late', name: 'Hull distance', unit: 'kJ/mol', notation: '', decimals: 1 },
    { id: 'merit', kind: 'own', name: 'merit', unit: 'g/cm3', notation: 'merit = density / 4', decimals: 3 },
    { id: 'myColumn', kind: 'own', name: 'myColumn', unit: '', notation: 'myColumn', decimals: 3 },
  ],
  prices: null,
} as unknown as SearchView;

const told = (...values: Record<string, number | null>[]) =>
  ({
    alloys: values.map((one) => ({ values: one })),
    quantities: [{ id: 'density', name: 'Density', unit: 'g/cm3', decimals: 2 }],
    // The middle half of the published alloys: 7.99 and 8.01 differ little.
    typical: { density: { low: 7, middle: 7.5, high: 8 } },
    search,
    limitAs: ({ quantity, max }: { quantity: string; max?: number }) => `${quantity} up to ${max}`,
    unitAs: (unit: string) => unit.toUpperCase(),
    written: (value: number | null, decimals: number) => value?.toFixed(decimals) ?? '–',
  }) as unknown as Asked;
const limitRows = (asked: Asked) => searchGroups(asked)[0]!.rows;
const expressionRows = (asked: Asked) => searchGroups(asked)[1]!.rows;

test('a limit is met or not, on it met; on two sides of it alloys differ, however little', () => {
  const [density] = limitRows(told({ density: 8 }, { density: 8.01 }));
  expect(density!.name).toBe('density up to 8');
  expect(density!.cells.map(({ text, met }) => [text, met])).toEqual([
    ['8.00', true],
    ['8.01', false],
  ]);
  expect(density!.difference).toBe('unlike');
  expect(limitRows(told({ density: 7.98 }, { density: 7.99 }))[0]!.difference).toBe('little');
});

test('without a value a limit is not met; what cannot be computed is neither met nor not', () => {
  const [, merit] = limitRows(told({ merit: null }, {}));
  expect(merit!.cells.map(({ text, met }) => [text, met])).toEqual([
    ['–', false],
    ['–', undefined],
  ]);
});

test('expressions are told with their formulas, columns of one’s own are none', () => {
  const rows = expressionRows(told({ merit: 2 }, { merit: 1.97 }));
  expect(rows.map(({ name, unit, cells }) => [name, unit, cells.map(({ text }) => text)])).toEqual([
    ['merit = density / 4', 'G/CM3', ['2.000', '1.970']],
  ]);
});

test('without a search there is nothing of it', () => {
  expect(limitRows({ ...told({}), search: null })).toEqual([]);
  expect(expressionRows({ ...told({}), search: null })).toEqual([]);
});

test('a limit on the kept ones follows the others and says so; who was not kept is neither met nor not', () => {
  const row = limitRows(told({ hullDistance: 4.2 }, { hullDistance: 5.1 }, {})).at(-1)!;
  expect(row.name).toBe('hullDistance up to 5, applied to the kept ones only');
  expect(row.cells.map(({ text, met }) => [text, met])).toEqual([
    ['4.2', true],
    ['5.1', false],
    ['–', undefined],
  ]);
});
