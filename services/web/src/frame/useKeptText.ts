import { useState } from 'react';

/**
 * A text that is being typed, kept in this browser tab until it is emptied or `settled`: taken over by
 * whatever the page keeps elsewhere. `first` stands there where nothing is kept.
 */
export function useKeptText(
  name: string,
  first = '',
): [text: string, write: (text: string) => void, settled: (text: string) => void] {
  const place = `tiegel.typed.${name}`;
  const [text, setText] = useState(() => read(place) ?? first);
  const store = (next: string | null) => {
    try {
      if (next === null || next === first) sessionStorage.removeItem(place);
      else sessionStorage.setItem(place, next);
    } catch {
      // A browser that refuses storage, or so long a text, only loses it on a reload; a text before it would be worse than none.
      forget(place);
    }
  };
  return [
    text,
    (next) => {
      setText(next);
      store(next);
    },
    (next) => {
      setText(next);
      store(null);
    },
  ];
}

function read(place: string): string | null {
  try {
    return sessionStorage.getItem(place);
  } catch {
    return null;
  }
}

function forget(place: string): void {
  try {
    sessionStorage.removeItem(place);
  } catch {
    // There is nothing to forget where nothing can be kept.
  }
}
