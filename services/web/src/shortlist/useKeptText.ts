import { useState } from 'react';

/** A text that is being typed, kept in this browser tab until it is emptied. */
export function useKeptText(name: string): [string, (text: string) => void] {
  const place = `tiegel.typed.${name}`;
  const [text, setText] = useState(() => read(place));
  return [
    text,
    (next) => {
      setText(next);
      try {
        if (next === '') sessionStorage.removeItem(place);
        else sessionStorage.setItem(place, next);
      } catch {
        // A browser that refuses storage, or so long a text, only loses it on a reload; a text before it would be worse than none.
        forget(place);
      }
    },
  ];
}

function read(place: string): string {
  try {
    return sessionStorage.getItem(place) ?? '';
  } catch {
    return '';
  }
}

function forget(place: string): void {
  try {
    sessionStorage.removeItem(place);
  } catch {
    // There is nothing to forget where nothing can be kept.
  }
}
