import { expect, test } from 'vitest';
import { countInWords, shareError, shareInWords } from '../../src/numbers/shareInWords.ts';

// Wilson's 95 % interval of 10 in 100, from memory of common tables: 0.0552 to 0.1744.
test('the error is the greater distance to an end of the interval', () => {
  expect(shareError(0.1, 100)).toBeCloseTo(0.1744 - 0.1, 4);
});

test.each([
  [516, 4000, false, '12.9 % ± 1.1'],
  [0, 4000, false, 'fewer than 1 in 1,000'],
  [0, 20_000, false, 'fewer than 1 in 5,200'],
  [4, 4000, false, 'about 1 in 1,000'],
  [4000, 4000, false, 'more than 99.9 %'],
  [0, 40, true, '0 %'],
  [10, 40, true, '25.0 %'],
])('%d of %d, whole: %s, is “%s”', (hits, size, whole, words) => {
  expect(shareInWords(hits, size, whole)).toBe(words);
});

test('none drawn is never said to be rarer than the sample can tell: the bound lies above 3/n, the rule of three', () => {
  for (const size of [100, 4000, 20_000]) {
    const bound = Number(shareInWords(0, size, false).replace(/^.* 1 in |,/g, ''));
    expect(1 / bound).toBeGreaterThan(3 / size);
  }
});

test.each([
  [516, 4000, 38_494, false, 'about 4,970 ± 410 of 38,494 compositions'],
  [3, 4000, 38_494, false, 'about 30 of 38,494 compositions'],
  [0, 4000, 38_494, false, 'probably fewer than 37 of 38,494 compositions'],
  [7, 40, 40, true, '7 of 40 compositions'],
])('%d of %d of %d are %s', (hits, size, points, whole, words) => {
  expect(countInWords(hits, size, points, whole)).toBe(words);
});
