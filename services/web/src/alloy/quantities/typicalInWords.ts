import type { TypicalRange } from '@tiegel/contract';

/** Where a value lies among the published alloys, in words. */
export function typicalInWords(
  value: number,
  { low, middle, high }: TypicalRange,
  write: (value: number) => string,
): string {
  const place =
    value < low
      ? 'lower than in three quarters of them'
      : value > high
        ? 'higher than in three quarters of them'
        : 'among their middle half';
  return `Of the published alloys half lie between ${write(low)} and ${write(high)}, the middle one at ${write(middle)}; this one is ${place}.`;
}
