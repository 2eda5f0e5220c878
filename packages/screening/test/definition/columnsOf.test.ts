import { columns, pairColumns, priceColumn } from '@tiegel/elements';
import { expect, test } from 'vitest';
import {
  below,
  choose,
  column,
  columnsOf,
  divide,
  elementQuotient,
  greatestPair,
  least,
  linear,
  logarithm,
  pairColumn,
  power,
  productOfTwo,
  quantities,
  quantityById,
  times,
} from '../../src/index.ts';

test('the columns of a quantity are read off its formula', () => {
  expect(columnsOf(quantityById('omega'))).toEqual({
    elements: ['meltingTemperature'],
    pairs: ['mixingEnthalpy'],
  });
  expect(columnsOf(quantityById('costPerLitre'))).toEqual({
    elements: ['atomicMass', 'price', 'density'],
    pairs: [],
  });
  expect(columnsOf(quantityById('configurationalEntropy'))).toEqual({ elements: [], pairs: [] });
});

test('no corner of a formula is overlooked', () => {
  const formula = choose(
    below(least(column('a')), power(linear(elementQuotient(column('b'), column('c'))), 2)),
    logarithm(greatestPair(pairColumn('p'))),
    divide(linear('d'), times(2, greatestPair(productOfTwo(column('e'))))),
  );
  expect(columnsOf({ ...quantityById('density'), formula })).toEqual({
    elements: ['a', 'b', 'c', 'd', 'e'],
    pairs: ['p'],
  });
});

test('every quantity reads columns that exist', () => {
  const known = new Set<string>([...columns, priceColumn].map(({ id }) => id));
  const knownPairs = new Set<string>(pairColumns.map(({ id }) => id));
  for (const quantity of quantities) {
    const { elements, pairs } = columnsOf(quantity);
    for (const id of elements) expect(known).toContain(id);
    for (const id of pairs) expect(knownPairs).toContain(id);
  }
});
