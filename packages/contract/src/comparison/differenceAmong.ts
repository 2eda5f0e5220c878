import type { TypicalRange } from '../alloy/typicalRanges.ts';

/**
 * How much alloys differ in a quantity: against how much published alloys differ (their middle
 * half). What is no number is alike or 'unlike'.
 */
export type DifferenceGrade = 'none' | 'little' | 'some' | 'much' | 'unlike';

/** Each with a sign, for who sees no colour, and a word. */
export const differenceTerms: Readonly<Record<DifferenceGrade, { sign: string; word: string }>> = {
  none: { sign: '=', word: 'alike' },
  little: { sign: '≈', word: 'little' },
  some: { sign: '≠', word: 'some' },
  much: { sign: '≠≠', word: 'much' },
  unlike: { sign: '≠', word: 'differs' },
};

/** Below this part of the middle half a difference is little, above all of it much. */
const some = 0.25;

/**
 * How much the values differ; what lacks a value differs much from what has one. null where the
 * scale is not known, so that no difference can be judged.
 */
export function differenceAmong(
  values: readonly (number | null)[],
  typical: TypicalRange | null,
): DifferenceGrade | null {
  const known = values.filter((value) => value !== null);
  if (known.length === 0) return 'none';
  if (known.length < values.length) return 'much';
  const spread = Math.max(...known) - Math.min(...known);
  if (spread <= 1e-9 * Math.max(...known.map(Math.abs))) return 'none';
  const scale = typical === null ? 0 : typical.high - typical.low;
  if (scale === 0) return null;
  return spread < some * scale ? 'little' : spread <= scale ? 'some' : 'much';
}
