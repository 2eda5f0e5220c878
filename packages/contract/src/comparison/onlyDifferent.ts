import type { ComparisonGroup, ComparisonRow } from './comparison.ts';

/** The lines in which alloys differ: more than a little, or by how much nobody can say. */
export function onlyDifferent(groups: readonly ComparisonGroup[]): ComparisonGroup[] {
  return groups
    .map(({ head, rows }) => ({ head, rows: rows.filter(differs) }))
    .filter(({ rows }) => rows.length > 0);
}

function differs({ difference }: ComparisonRow): boolean {
  return difference !== 'none' && difference !== 'little';
}
