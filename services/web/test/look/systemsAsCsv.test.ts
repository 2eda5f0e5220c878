import type { SystemView } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { systemsAsCsv } from '../../src/look/systemsAsCsv.ts';

const best = (rank: number, density: number | null) => ({
  rank,
  score: 1,
  composition: { Al: 5, Fe: 95 },
  quantities: { density },
});
const items = [
  {
    ...{ system: 'Al Fe', kept: 12, best: best(1, 7.123456789012345), melts: 1, own: 2 },
    published: {
      alloys: 3,
      references: 4,
      phases: [
        { phases: 'BCC+B2, aged', alloys: 2 },
        { phases: null, alloys: 1 },
      ],
    },
  },
  { system: 'Al Ti', kept: 1, best: best(40, null), melts: 0, own: 0, published: null },
] satisfies SystemView[];

test('systems are written with units, numbers in full, and fields that hold a comma in quotes', () => {
  expect(systemsAsCsv(items, [{ id: 'density', unit: 'g/cm3' }]).split('\n')).toEqual([
    'place,system,kept,best rank,best composition (at.%),density (g/cm3),published alloys,published phases,melts recorded here,own alloys',
    '1,Al Fe,12,1,Al5Fe95,7.123456789012345,3,"BCC+B2, aged 2; not reported 1",1,2',
    '2,Al Ti,1,40,Al5Fe95,,0,,0,0',
    '',
  ]);
});
