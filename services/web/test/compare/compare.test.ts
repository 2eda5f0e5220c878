import { expect, test } from 'vitest';
import { compareAddress } from '../../src/compare/compareAddress.ts';
import { readCompareView, writeCompareView } from '../../src/compare/compareView.ts';

test('a comparison comes back from its address, each alloy once and canonical', () => {
  const view = readCompareView(
    'alloy=CoNi&alloy=Ni50Co50&alloy=Fe3Ni&alloy=?&search=ab&only=different&grainSize=4',
  );
  expect(view).toEqual({
    alloys: ['Co50Ni50', 'Fe75Ni25'],
    unreadable: ['?'],
    conditions: { grainSize: 4 },
    search: 'ab',
    onlyDifferent: true,
  });
  expect(readCompareView(writeCompareView(view))).toEqual({ ...view, unreadable: [] });
  expect(readCompareView(compareAddress(['Co50Ni50'], {}, 'ab').split('?')[1]!).search).toBe('ab');
});
