import type { ComparisonGroup } from './comparison.ts';

/**
 * Groups for people where a line and a quantity are the same number: it stands once, in the place of the line, under
 * the name and in the form of the quantity. Files keep both.
 * @param line its id; it stays where the quantity is not among the groups
 */
export function toldOnce(
  groups: readonly ComparisonGroup[],
  line: string,
  quantity: string,
): ComparisonGroup[] {
  const told = groups.flatMap(({ rows }) => rows).find(({ id }) => id === quantity);
  if (told === undefined || !groups.some(({ rows }) => rows.some(({ id }) => id === line)))
    return [...groups];
  return groups
    .map((group) => ({
      ...group,
      rows: group.rows.flatMap((row) => (row.id === line ? [told] : row.id === quantity ? [] : [row])),
    }))
    .filter(({ rows }) => rows.length > 0);
}
