import { useState } from 'react';
import { useHistoryState } from 'wouter/use-browser-location';

/** State of a history entry that changes the address of the page that is open without leaving it. */
export const inPlace = { inPlace: true } as const;

/**
 * Counts the pages that were opened. Another address is another visit, which begins at the top,
 * unless the same page changed its own address (`navigate(to, { state: inPlace })`): whoever edits
 * there keeps focus and place.
 *
 * @param page what the address leads to, compared by identity
 */
export function useVisit(location: string, page: unknown): number {
  const state = useHistoryState<Partial<typeof inPlace> | null>();
  const [seen, setSeen] = useState({ location, page, visit: 0 });
  if (seen.location === location) return seen.visit;
  const stays = state?.inPlace === true && page === seen.page;
  const now = { location, page, visit: seen.visit + (stays ? 0 : 1) };
  setSeen(now);
  return now.visit;
}
