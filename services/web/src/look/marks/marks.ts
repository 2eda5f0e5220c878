import { sharedValue, shareText } from '../../frame/sharedText.ts';

const placeOf = (searchId: string) => `tiegel.marked.${searchId}`;

/** More are no choice any more; they also go to a shortlist in one request. */
export const mostMarked = 100;

const listAt = sharedValue<readonly string[]>((text) => text.split(' ').filter(Boolean), []);

/** Canonical texts of the candidates of a search that are marked in this browser, in the order of marking. */
export const marksOf = (searchId: string): readonly string[] => listAt(placeOf(searchId));

export const keepMarks = (searchId: string, marked: readonly string[]): void =>
  shareText(placeOf(searchId), marked.join(' '));
