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
