import { useCallback, useRef } from 'react';
import { allElements } from './allElements.ts';

/** Letters further apart than this (ms) begin another symbol. */
const pause = 900;
const nothing = { text: '', time: 0 };

/**
 * Letters typed within a moment are a symbol, or its beginning: takes the next letter and gives
 * the symbol that they lead to. null, for another key, begins anew.
 */
export function useTypedSymbol(): (letter: string | null) => string | undefined {
  const typed = useRef(nothing);
  return useCallback((letter) => {
    if (letter === null) {
      typed.current = nothing;
      return undefined;
    }
    const now = performance.now();
    const before = now - typed.current.time < pause ? typed.current.text : '';
    const small = letter.toLowerCase();
    const text = symbolFrom(before + small) === undefined ? small : before + small;
    typed.current = { text, time: now };
    return symbolFrom(text);
  }, []);
}

/** The element of that symbol, else the first whose symbol begins so. */
function symbolFrom(text: string): string | undefined {
  const symbols = allElements.map(({ symbol }) => symbol);
  return (
    symbols.find((symbol) => symbol.toLowerCase() === text) ??
    symbols.find((symbol) => symbol.toLowerCase().startsWith(text))
  );
}
