import type { Fate, FateCounts } from '@tiegel/contract';

/** Every fate of a row: its mark, its word, and what it says of a number of rows. */
export const fates: readonly { id: Fate; mark: string; word: string; says: string }[] = [
  { id: 'refused', mark: '×', word: 'refused', says: 'refused' },
  { id: 'new', mark: '+', word: 'new', says: 'new' },
  { id: 'changed', mark: '≠', word: 'changed', says: 'changed' },
  { id: 'same', mark: '=', word: 'the same', says: 'the same as before' },
];

/** '3 new, 1 changed, 20 the same as before' */
export function countsInWords(counts: FateCounts): string {
  const told = fates.filter(({ id }) => counts[id] > 0).map(({ id, says }) => `${counts[id]} ${says}`);
  return told.length === 0 ? 'no rows' : told.join(', ');
}
