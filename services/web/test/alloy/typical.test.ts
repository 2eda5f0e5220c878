import { expect, test } from 'vitest';
import { typicalPlace } from '../../src/alloy/quantities/TypicalStrip.tsx';
import { typicalInWords } from '../../src/alloy/quantities/typicalInWords.ts';

const range = { low: 6, middle: 7, high: 9 };

test('the ends of the middle half lie at −1 and 1, the middle at 0, and nothing beyond 3', () => {
  expect([6, 7, 9, 5, 13, -50, 100].map((value) => typicalPlace(value, range))).toEqual([
    -1, 0, 1, -2, 3, -3, 3,
  ]);
  expect(typicalPlace(8, { low: 7, middle: 7, high: 7 })).toBe(3);
});

test('the place is told in words', () => {
  const said = (value: number) => typicalInWords(value, range, String);
  expect(said(8)).toContain(
    'half lie between 6 and 9, the middle one at 7; this one is among their middle half',
  );
  expect(said(5)).toContain('lower than in three quarters');
  expect(said(10)).toContain('higher than in three quarters');
});
