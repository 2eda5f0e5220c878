import { symbols } from '../periodicTable.ts';

/** Longer words have too many ways to be cut, and nobody types them. */
const longestWord = 30;

/**
 * The one way to write a text with a capital at each symbol ('cocrfemnni' as 'CoCrFeMnNi') so that
 * every word is made of symbols of elements with data, none of them twice; null where there is none,
 * or another. A capital that was typed begins a symbol.
 */
export function capitalised(text: string): string | null {
  const pieces = text.match(/[A-Za-z]+|[^A-Za-z]+/g) ?? [];
  if (pieces.some((piece) => piece.length > longestWord)) return null;
  const readings = cut(pieces, []);
  const only = readings.next();
  return only.done || !readings.next().done ? null : only.value;
}

function* cut(pieces: readonly string[], used: readonly string[]): Generator<string> {
  const [first, ...others] = pieces;
  if (first === undefined) {
    yield '';
    return;
  }
  if (!/[A-Za-z]/.test(first)) {
    for (const after of cut(others, used)) yield first + after;
    return;
  }
  for (const length of [2, 1]) {
    const letters = first.slice(0, length);
    const symbol = letters[0]!.toUpperCase() + letters.slice(1);
    if (letters.length < length || used.includes(symbol) || !symbols.includes(symbol)) continue;
    const left = first.slice(length);
    for (const after of cut(left === '' ? others : [left, ...others], [...used, symbol])) {
      yield symbol + after;
    }
  }
}
