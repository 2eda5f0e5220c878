/** How many points have no value of each limited quantity, by id; only counts that are not 0, ids in alphabetical order. */
export function outsideOf(
  limited: readonly string[],
  withoutValue: ArrayLike<number>,
): Record<string, number> {
  const counts = limited.map((id, output): [string, number] => [id, withoutValue[output]!]);
  return Object.fromEntries(counts.filter(([, count]) => count > 0).sort(([a], [b]) => (a < b ? -1 : 1)));
}
