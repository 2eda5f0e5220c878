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
        // A browser that refuses storage only loses it on a reload.
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
