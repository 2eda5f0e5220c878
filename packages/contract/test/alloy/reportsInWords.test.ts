import { expect, test } from 'vitest';
import { reportsInWords } from '../../src/alloy/reportsInWords.ts';

const published = { own: false, melt: null, methods: [] };
const reports = [
  { phases: 'BCC', references: 8 },
  { phases: 'BCC+B2', references: 5 },
];

test('a publication that reports two labels is one of all, and counts for both', () => {
  expect(reportsInWords({ ...published, reports, publications: 11 })).toBe(
    'BCC in 8 of 11 publications, BCC+B2 in 5',
  );
  const two = reports.map(({ phases }) => ({ phases, references: 1 }));
  expect(reportsInWords({ ...published, reports: two, publications: 1 })).toBe(
    'BCC and BCC+B2 in one publication',
  );
});

test('where nobody says how many there are, the labels are counted', () => {
  expect(reportsInWords({ ...published, reports })).toBe('BCC in 8 of 13 publications, BCC+B2 in 5');
});
