import { afterEach, beforeEach, expect, test, vi } from 'vitest';

/** The formats as a reader of the language gets them. */
async function readBy(language: string) {
  vi.resetModules();
  vi.stubGlobal('navigator', { language });
  const { formatNumber, formatCount, formatPercent } = await import('../../src/numbers/formatNumber.ts');
  const { formatDuration, formatSeconds } = await import('../../src/numbers/formatDuration.ts');
  return { formatNumber, formatCount, formatPercent, formatDuration, formatSeconds };
}

beforeEach(() => vi.unstubAllGlobals());
afterEach(() => vi.unstubAllGlobals());

test('numbers follow the language of the reader', async () => {
  const german = await readBy('de-DE');
  expect(german.formatNumber(12_345.678, 2)).toBe('12.345,68');
  const english = await readBy('en-US');
  expect(english.formatNumber(12_345.678, 2)).toBe('12,345.68');
});

test('four digits stay together as in a sentence, but a count is grouped', async () => {
  const { formatNumber, formatCount } = await readBy('en-US');
  expect(formatNumber(1811, 0)).toBe('1811');
  expect(formatNumber(-2509.42, 2)).toBe('−2509.42');
  expect(formatCount(1022)).toBe('1,022');
});

test('a missing value is a dash, a negative one has a true minus, and nothing is minus zero', async () => {
  const { formatNumber } = await readBy('en-US');
  expect(formatNumber(null, 2)).toBe('–');
  expect(formatNumber(-1.5, 2)).toBe('−1.50');
  expect(formatNumber(-0.001, 2)).toBe('0.00');
});

test('a share of the whole never rounds something to nothing or a part to all', async () => {
  const { formatPercent } = await readBy('en-US');
  expect(formatPercent(0, 1000)).toBe('0 %');
  expect(formatPercent(1, 10_000_000)).toBe('< 0.01 %');
  expect(formatPercent(43, 10_000)).toBe('0.43 %');
  expect(formatPercent(999_999, 1_000_000)).toBe('< 100 %');
  expect(formatPercent(1000, 1000)).toBe('100 %');
  expect(formatPercent(5, 0)).toBe('–');
});

test.each([
  [0, 'under 0.01 s'],
  [0.006, '0.01 s'],
  [12.34, '12.3 s'],
])('%d measured seconds are told as %s', async (seconds, words) => {
  const { formatSeconds } = await readBy('en-US');
  expect(formatSeconds(seconds)).toBe(words);
});

test.each([
  [0.2, 'under 1 s'],
  [1.44, '1.4 s'],
  [8.4, '8 s'],
  [75, '75 s'],
  [600, '10 min'],
  [5400, '1 h 30 min'],
  [7 * 3600 + 25 * 60, '7 h 20 min'],
  [36 * 3600, '36 h'],
  [12.2 * 86400, '12 days'],
  [4000 * 86400, '11 years'],
])('%d seconds are told as %s', async (seconds, words) => {
  const { formatDuration } = await readBy('en-US');
  expect(formatDuration(seconds)).toBe(words);
});
