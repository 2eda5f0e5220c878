import { expect, test } from 'vitest';
import { type PublishedMeasurement, publishedMeasurements } from '../../src/published/index.ts';
import { phaseReports } from '../../src/published/phaseReports.ts';

const record = (phases: string | null, doi: string): PublishedMeasurement => ({
  ...publishedMeasurements()[0]!,
  phases,
  doi,
});

test('publications count, not their records', () => {
  const records = [record('BCC', 'a'), record('BCC', 'a'), record('FCC', 'b'), record('FCC', 'c')];
  expect(phaseReports(records)).toEqual([
    { phases: 'FCC', references: 2 },
    { phases: 'BCC', references: 1 },
  ]);
});

test('of equals the label with more phases comes first, then the alphabet decides', () => {
  const records = [record('FCC', 'a'), record('FCC+B2', 'b'), record('B2+L12', 'c'), record('BCC', 'd')];
  expect(phaseReports(records).map(({ phases }) => phases)).toEqual(['B2+L12', 'FCC+B2', 'BCC', 'FCC']);
});

test('a record without phases reports nothing', () => {
  expect(phaseReports([record(null, 'a')])).toEqual([]);
});
