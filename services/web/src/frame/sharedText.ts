const listeners = new Set<() => void>();
/** What a browser that refuses storage remembers until the page is left. */
const unkept = new Map<string, string>();

/** A text that all tabs of this browser share, and reloads keep; null where there is none. */
export function sharedText(place: string): string | null {
  const text = unkept.get(place);
  if (text !== undefined) return text === '' ? null : text;
  try {
    return localStorage.getItem(place);
  } catch {
    return null;
  }
}

/** Keeps another text, or with '' none, and tells whoever listens. */
export function shareText(place: string, text: string): void {
  try {
    if (text === '') localStorage.removeItem(place);
    else localStorage.setItem(place, text);
    unkept.delete(place);
  } catch {
    unkept.set(place, text);
  }
  for (const listener of listeners) listener();
}

/** Calls when any of the texts changes, here or in another tab; ends with what it returns. */
export function onSharedText(listener: () => void): () => void {
  listeners.add(listener);
  window.addEventListener('storage', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('storage', listener);
  };
}

/**
 * Reads what a shared text stands for: one value as long as the text stays the same, since React compares by
 * identity. @param read throws for a text that it cannot read, which then counts as none
 */
export function sharedValue<Value>(read: (text: string) => Value, none: Value): (place: string) => Value {
  const known = new Map<string, { text: string | null; value: Value }>();
  const readable = (text: string | null): Value => {
    try {
      return text === null ? none : read(text);
    } catch {
      return none;
    }
  };
  return (place) => {
    const text = sharedText(place);
    const before = known.get(place);
    if (before !== undefined && before.text === text) return before.value;
    const value = readable(text);
    known.set(place, { text, value });
    return value;
  };
}
