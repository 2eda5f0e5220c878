import type { ShortlistChange } from '@tiegel/contract';

const placeOf = (id: string) => `tiegel.shortlist.${id}.1`;
const listeners = new Set<() => void>();
/** One array as long as nothing changes: React compares by identity. */
const known = new Map<string, readonly ShortlistChange[]>();

/**
 * Changes of a shortlist that this browser has made and the server has not answered yet. They
 * survive a reload and an hour without a connection, and are sent in their order.
 */
export function pendingChanges(id: string): readonly ShortlistChange[] {
  const before = known.get(id);
  if (before !== undefined) return before;
  const read = readPending(id);
  known.set(id, read);
  return read;
}

export function addPending(id: string, changes: readonly ShortlistChange[]): void {
  keep(id, [...pendingChanges(id), ...changes]);
}

/** Takes away what the server has answered, by key. */
export function settle(id: string, keys: ReadonlySet<string>): void {
  keep(
    id,
    pendingChanges(id).filter(({ key }) => !keys.has(key)),
  );
}

export function onPending(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function readPending(id: string): readonly ShortlistChange[] {
  try {
    return JSON.parse(localStorage.getItem(placeOf(id)) ?? '[]') as ShortlistChange[];
  } catch {
    return [];
  }
}

function keep(id: string, changes: readonly ShortlistChange[]): void {
  known.set(id, changes);
  try {
    if (changes.length === 0) localStorage.removeItem(placeOf(id));
    else localStorage.setItem(placeOf(id), JSON.stringify(changes));
  } catch {
    // Without storage a reload loses what was not sent; the page says that it is not sent.
  }
  for (const listener of listeners) listener();
}

// Another tab of this browser writes to the same place.
if (typeof window !== 'undefined') {
  window.addEventListener('storage', () => {
    known.clear();
    for (const listener of listeners) listener();
  });
}
