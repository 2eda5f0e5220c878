import type { QuantityView } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { rowsAsCsv } from '../../../src/look/candidates/rowsAsCsv.ts';

test('copied rows have a head with units, full precision, a decimal point, and nothing where there is no value', () => {
  const columns = [
    { id: 'density', unit: 'g/cm3' },
    { id: 'omega', unit: '' },
  ] as QuantityView[];
  const rows = [
    {
      rank: 3,
      composition: { Al: 5, Fe: 95 },
      quantities: { density: 7.123456789012345, omega: null },
      score: 1,
    },
  ];
  expect(rowsAsCsv(rows, columns)).toBe(
    'rank,composition (at.%),density (g/cm3),omega\r\n3,Al5Fe95,7.123456789012345,',
  );
});
