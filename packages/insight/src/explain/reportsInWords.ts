import type { Neighbour } from '../neighbours/nearestPublished.ts';

type Reports = Pick<Neighbour, 'reports' | 'publications'>;

/** All that publications report of one composition, with their counts where they differ: 'FCC in 18 of 20 publications, FCC+Sec. in 2'. */
export function reportsInWords({ reports, publications: all }: Reports): string {
  const [first, ...others] = reports;
  if (first === undefined) return 'no phases were reported';
  if (others.length === 0) return `${first.phases} in ${allInWords(all)}`;
  if (all === 1) return `${reports.map(({ phases }) => phases).join(' and ')} in ${allInWords(all)}`;
  const rest = others.map(({ phases, references }) => `${phases} in ${references}`);
  return `publications differ: ${first.phases} in ${first.references} of ${all}, ${rest.join(', ')}`;
}

/** So many publications, and no other reports anything else. */
function allInWords(count: number): string {
  if (count === 1) return 'one publication';
  return count === 2 ? 'both publications' : `all ${count} publications`;
}
