import { useEffect, useState } from 'react';

/** A small state of a form that a reload of the tab keeps; `name` is its place in the storage. */
export function useKept<T>(name: string, initial: T): [T, (next: T) => void] {
  const place = `tiegel.${name}`;
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
