import { Fragment } from 'react';
import { elementBySymbol } from '../periodic/allElements.ts';
import { tied } from './tied.ts';

/** What may be a formula of two or more elements, or a label of phases that is not read as it is written. */
const words = /\b(?:(?:[A-Z][a-z]?(?:\d+(?:\.\d+)?)?){2,}|L12|Sec\.(?=[+ ,;)]|$)|sigma|mu)(?![\p{L}\p{N}])/gu;
const part = /([A-Z][a-z]?)(\d+(?:\.\d+)?)?/g;
const labels: Readonly<Record<string, string>> = { 'Sec.': 'second phase', sigma: 'σ', mu: 'µ' };

/** A piece of a text: as it is, or set low. */
export interface Piece {
  text: string;
  low: boolean;
}

/** A text in pieces: amounts in formulas are set low (CrFe3, Al0.5CoCrFeNi, L12), labels of phases are words. */
export function piecesOf(text: string): Piece[] {
  const pieces: Piece[] = [];
  let from = 0;
  for (const found of text.matchAll(words)) {
    const set = pieceOf(found[0]);
    if (set === null) continue;
    pieces.push({ text: text.slice(from, found.index), low: false }, ...set);
    from = found.index + found[0].length;
  }
  pieces.push({ text: text.slice(from), low: false });
  return pieces.filter((piece) => piece.text !== '');
}

/** A word in pieces; null for one that stays as it is. */
function pieceOf(word: string): Piece[] | null {
  if (word === 'L12') return [plain('L1'), { text: '2', low: true }];
  const label = labels[word];
  if (label !== undefined) return [plain(label)];
  const parts = [...word.matchAll(part)];
  if (!/\d/.test(word) || parts.some(([, symbol]) => !elementBySymbol.has(symbol!))) return null;
  return parts.flatMap(([, symbol, amount]) =>
    amount === undefined ? [plain(symbol!)] : [plain(symbol!), { text: amount, low: true }],
  );
}

const plain = (text: string): Piece => ({ text, low: false });

/** A sentence of the program as it is printed: numbers stay with their units, formulas are set as in print. */
export function Prose({ text }: { text: string }) {
  return piecesOf(tied(text)).map((piece, index) =>
    piece.low ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of a fixed text never change places
      <sub key={index}>{piece.text}</sub>
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of a fixed text never change places
      <Fragment key={index}>{piece.text}</Fragment>
    ),
  );
}
