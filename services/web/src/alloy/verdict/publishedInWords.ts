import type { Neighbour } from '@tiegel/contract';
import { isSame, reportsInWords } from '@tiegel/contract/terms';
import { formatPercent } from '../../numbers/formatNumber.ts';

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
