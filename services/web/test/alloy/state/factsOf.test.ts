import { demoPrices, elementRecords, factsFor, pairRecords } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { factsOf } from '../../../src/alloy/state/factsOf.ts';

test('what the API tells gives the same facts as the tables that the server computes from', () => {
  const symbols = ['Ni', 'Al', 'Zr', 'C', 'La'];
  const told = factsOf(symbols, elementRecords(demoPrices), pairRecords());
  expect(told).toEqual(factsFor(symbols, { prices: demoPrices }));
});
