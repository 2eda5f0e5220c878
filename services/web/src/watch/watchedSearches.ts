import { useSyncExternalStore } from 'react';

/** Where this tab keeps which searches it saw at work: their end is told on whatever page it then shows. */
const place = 'tiegel.watched';

let ids: readonly string[] = stored();
const listeners = new Set<() => void>();

function stored(): readonly string[] {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(place) ?? '[]');
    return Array.isArray(kept) ? kept.filter((id) => typeof id === 'string') : [];
  } catch {
    return [];
  }
}

function keep(next: readonly string[]): void {
  ids = next;
  try {
    sessionStorage.setItem(place, JSON.stringify(next));
  } catch {
    // A browser that refuses storage tells no end after a reload.
  }
  for (const listener of listeners) listener();
}

/** The end of this search is to be told. */
export function watchSearch(id: string): void {
  if (!ids.includes(id)) keep([...ids, id]);
}

/** Its end was read, or nobody wants to know. */
export function unwatchSearch(id: string): void {
  if (ids.includes(id)) keep(ids.filter((one) => one !== id));
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Ids of the searches whose end is to be told, or was told and not closed yet. */
export function useWatchedSearches(): readonly string[] {
  return useSyncExternalStore(subscribe, () => ids);
}
