import { longestHolderName } from '../access/roles.ts';

/** The longest texts of a shortlist, in characters: more is no name and no note, and everybody who opens the list is sent it. */
export const shortlistMost = { name: 120, by: longestHolderName, note: 2000 } as const;

/** So many candidates are picked at once: more are no spread to talk about. */
export const mostPicked = 100;
