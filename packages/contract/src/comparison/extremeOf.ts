import type { ComparisonRow } from './comparison.ts';

/**
 * Whether an alloy's number is the highest or the lowest of its line; null where the alloys hardly
 * differ in it, and for all that is no number.
 */
export function extremeOf(
  { cells, difference, numeric }: Pick<ComparisonRow, 'cells' | 'difference' | 'numeric'>,
  at: number,
): 'highest' | 'lowest' | null {
  if (!numeric || difference === 'none' || difference === 'little') return null;
  const { value } = cells[at]!;
  const known = cells.flatMap((cell) => cell.value ?? []);
  if (value === null || known.length < 2) return null;
  const [least, greatest] = [Math.min(...known), Math.max(...known)];
  if (least === greatest) return null;
  return value === greatest ? 'highest' : value === least ? 'lowest' : null;
}
