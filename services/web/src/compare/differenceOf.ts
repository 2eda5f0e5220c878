import type { TypicalRange } from '@tiegel/contract';

/**
 * How much alloys differ in a quantity: against how much published alloys differ (their middle
 * half). What is no number is alike or 'unlike'.
 */
export type Difference = 'none' | 'little' | 'some' | 'much' | 'unlike';

/** Below this part of the middle half a difference is little, above all of it much. */
const some = 0.25;

/**
 * How much the values differ; what lacks a value differs much from what has one. null where the
 * scale is not known, so that no difference can be judged.
 */
export function differenceOf(
  values: readonly (number | null)[],
  typical: TypicalRange | null,
): Difference | null {
  const known = values.filter((value) => value !== null);
  if (known.length === 0) return 'none';
  if (known.length < values.length) return 'much';
  const spread = Math.max(...known) - Math.min(...known);
  if (spread <= 1e-9 * Math.max(...known.map(Math.abs))) return 'none';
  const scale = typical === null ? 0 : typical.high - typical.low;
  if (scale === 0) return null;
  return spread < some * scale ? 'little' : spread <= scale ? 'some' : 'much';
}

/** Which of the values is the highest, which the lowest; none where all are alike. */
export function extremeOf(
  value: number | null,
  values: readonly (number | null)[],
): 'highest' | 'lowest' | null {
  const known = values.filter((one) => one !== null);
  if (value === null || known.length < 2) return null;
  const [least, greatest] = [Math.min(...known), Math.max(...known)];
  if (least === greatest) return null;
  return value === greatest ? 'highest' : value === least ? 'lowest' : null;
}
