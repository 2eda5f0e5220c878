import { expect, test } from 'vitest';
import { inDigits } from '../src/terms.ts';

test.each([
  [7, '7'],
  [999, '999'],
  [1_234_567, '1,234,567'],
  [-22_515_165, '-22,515,165'],
  [1234.5, '1234.5'],
  [1e21, '1e+21'],
  [8_583_000_000_000_000_000n, '8,583,000,000,000,000,000'],
])('%d is printed as %s', (value, printed) => {
  expect(inDigits(value)).toBe(printed);
});
