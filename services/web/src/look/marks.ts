const placeOf = (searchId: string) => `tiegel.marked.${searchId}`;

/** More are no choice any more; they also go to a shortlist in one request. */
export const mostMarked = 100;

const listeners = new Set<() => void>();
/** One array as long as nothing changes: React compares by identity. */
const known = new Map<string, { text: string | null; marked: readonly string[] }>();
/** What a browser without storage remembers until the page is left. */
const unkept = new Map<string, string>();

/** Canonical texts of the candidates of a search that are marked in this browser, in the order of marking. */
export function marksOf(searchId: string): readonly string[] {
  const text = stored(searchId);
  const before = known.get(searchId);
  if (before?.text === text && before !== undefined) return before.marked;
  const marked = (text ?? '').split(' ').filter(Boolean);
  known.set(searchId, { text, marked });
  return marked;
}

export function keepMarks(searchId: string, marked: readonly string[]): void {
  const text = marked.join(' ');
  try {
    if (text === '') localStorage.removeItem(placeOf(searchId));
    else localStorage.setItem(placeOf(searchId), text);
    unkept.delete(searchId);
  } catch {
    unkept.set(searchId, text);
  }
  for (const listener of listeners) listener();
}

/** Calls when marks change here or in another tab; ends with what it returns. */
export function onMarks(listener: () => void): () => void {
  listeners.add(listener);
  window.addEventListener('storage', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('storage', listener);
  };
}

function stored(searchId: string): string | null {
  const text = unkept.get(searchId);
  if (text !== undefined) return text;
  try {
    return localStorage.getItem(placeOf(searchId));
  } catch {
    return null;
  }
}
