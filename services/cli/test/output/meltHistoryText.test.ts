import { expect, test } from 'vitest';
import { type MeltVersion, meltHistoryText } from '../../src/output/meltHistoryText.ts';

test('the history of a melt says whose token wrote a version, where somebody was asked for one', () => {
  const versions = [
    { version: 2, at: '2026-11-30T10:00:00Z', by: 'Ana Berg', entry: { hardness: 90 } },
    { version: 1, at: '2026-11-29T10:00:00Z', by: null, entry: { hardness: null } },
  ] as unknown as MeltVersion[];
  expect([...meltHistoryText(versions)]).toEqual([
    'version 2, 2026-11-30T10:00:00Z, Ana Berg: hardness nothing → 90\n',
    'version 1, 2026-11-29T10:00:00Z: recorded\n',
  ]);
});
