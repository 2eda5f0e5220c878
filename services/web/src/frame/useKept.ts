import { useEffect, useState } from 'react';

const placeOf = (name: string) => `tiegel.${name}`;

/** A small state of a form that a reload of the tab keeps; `name` is its place in the storage. */
export function useKept<T>(name: string, initial: T): [T, (next: T) => void] {
  const place = placeOf(name);
  const [value, setValue] = useState<T>(() => {
    try {
      const text = sessionStorage.getItem(place);
      return text === null ? initial : (JSON.parse(text) as T);
    } catch {
      return initial;
    }
  });
  useEffect(() => {
    try {
      sessionStorage.setItem(place, JSON.stringify(value));
    } catch {
      // A browser that refuses storage only loses this on a reload.
    }
  }, [place, value]);
  return [value, setValue];
}

/** Whether a form of this tab has kept a state under this name, be it the one that it began with: it was open. */
export function isKept(name: string): boolean {
  try {
    return sessionStorage.getItem(placeOf(name)) !== null;
  } catch {
    return false;
  }
}
