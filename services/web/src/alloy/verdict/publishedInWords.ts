import type { Neighbour } from '@tiegel/contract';
import { formatPercent } from '../../numbers/formatNumber.ts';

/** Shares of atoms that differ below this are the same alloy, differently rounded. */
const same = 0.005;

/** Whether a published alloy is this very one. */
export function isSame({ distance }: Neighbour): boolean {
  return distance < same;
}

/** No more can be said: well-known alloys are not in the table, CoCrFeNi and CoCrNi among them. */
const notInTable = 'Not in the table of published alloys here, which is a part of what is published.';

/** What is published of the alloy or nearest to it, in one or two sentences. */
export function publishedInWords(nearest: readonly Neighbour[]): string {
  const known = nearest.filter(isSame);
  if (known.length > 0) {
    return known
      .map((one) => {
        const what = one.melt
          ? 'You melted this alloy'
          : one.own
            ? 'You brought this alloy in'
            : 'This alloy is published';
        return `${what} (as ${one.formula}): ${reportsInWords(one)}.`;
      })
      .join(' ');
  }
  const near = nearest.find(({ phases }) => phases !== null);
  if (!near) return notInTable;
  return (
    `${notInTable} Nearest with known phases is ` +
    `${near.formula}, ${formatPercent(near.distance, 1)} of the atoms apart: ${reportsInWords(near)}.`
  );
}

/** 'FCC in 17 of 20 publications, FCC+BCC in 2'; 'no phases reported'; of one's own the phases, of a melt how they were observed. */
export function reportsInWords({ reports, own, melt, methods }: Neighbour): string {
  const all = reports.reduce((sum, { references }) => sum + references, 0);
  const [first, ...others] = reports;
  if (!first) return melt === null ? 'no phases reported' : 'phases not looked at yet';
  if (own) return methods.length === 0 ? first.phases : `${first.phases}, by ${methods.join(' and ')}`;
  if (others.length === 0) return `${first.phases} in ${allInWords(all)}`;
  const rest = others.map(({ phases, references }) => `${phases} in ${references}`);
  return `${first.phases} in ${first.references} of ${all} publications, ${rest.join(', ')}`;
}

/** So many publications, and no other reports anything else. */
function allInWords(count: number): string {
  if (count === 1) return 'one publication';
  return count === 2 ? 'both publications' : `all ${count} publications`;
}
