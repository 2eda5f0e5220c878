import { stopFor } from './stopFor.ts';

/** A symbol or a bracket as it was written; `place` is the character, from 1, at which it begins. */
export interface Item {
  /** null: a bracket */
  symbol: string | null;
  /** what a bracket holds; a symbol holds nothing */
  items: readonly Item[];
  /** null: none was written */
  amount: number | null;
  place: number;
}

/** Where reading came to an end before the text did, as an index, and what is wrong there. */
export interface Stop {
  index: number;
  found: string;
}

interface Open {
  items: Item[];
  index: number;
  /** the sign that closes it; '': the text itself, which none closes */
  closing: string;
}

/** Brackets in one another; what papers print has at most two: [(Fe0.6Co0.4)0.75B0.25]96Nb4. */
const deepest = 2;

const closings: Readonly<Record<string, string>> = { '(': ')', '[': ']' };
const spaces = /\s*/y;
const symbolThere = /[A-Z][a-z]?/y;
// Digits below the line and on it are not mixed: Al2₃ would be 23 or 2.
const amountThere = /\d+(?:\.\d+)?|\.\d+|[₀-₉]+(?:\.[₀-₉]+)?|\.[₀-₉]+/y;

/**
 * What an alloy text is made of: symbols and brackets, round or square and at most two deep, each
 * with or without a decimal amount behind it, in digits on or below the line, spaces anywhere
 * between. Reads up to the first character that has no place there, and says why it has none.
 */
export function readItems(text: string): { items: readonly Item[]; stop: Stop | null } {
  const open: Open[] = [{ items: [], index: 0, closing: '' }];
  let index = 0;
  const take = (pattern: RegExp): string | null => {
    pattern.lastIndex = index;
    const found = pattern.exec(text)?.[0] ?? null;
    index += found?.length ?? 0;
    return found;
  };
  const takeAmount = (): number | null => {
    take(spaces);
    const written = take(amountThere);
    return written === null ? null : Number(onTheLine(written));
  };
  // What stands in brackets that are still open is told, too, so that its faults can be.
  const ended = (stop: Stop | null) => ({ items: open.flatMap(({ items }) => items), stop });
  while (true) {
    take(spaces);
    const innermost = open.at(-1)!;
    const place = index + 1;
    if (index === text.length) {
      const unclosed = { index: innermost.index, found: 'the bracket that opens there is never closed' };
      return ended(open.length === 1 ? null : unclosed);
    }
    const symbol = take(symbolThere);
    const sign = text[index]!;
    if (symbol !== null) {
      innermost.items.push({ symbol, items: [], amount: takeAmount(), place });
    } else if (sign in closings && open.length <= deepest) {
      open.push({ items: [], index, closing: closings[sign]! });
      index += 1;
    } else if (sign === innermost.closing && innermost.items.length > 0) {
      index += 1;
      open.pop();
      const { items } = innermost;
      open.at(-1)!.items.push({ symbol: null, items, amount: takeAmount(), place: innermost.index + 1 });
    } else {
      return ended({ index, found: stopFor(text, index, innermost) });
    }
  }
}

/** What an item counts beside its neighbours: a symbol without an amount 1, such a bracket the sum of what it holds. */
export function counted({ symbol, items, amount }: Item): number {
  if (amount !== null) return amount;
  return symbol === null ? items.reduce((sum, item) => sum + counted(item), 0) : 1;
}

const onTheLine = (digits: string): string =>
  digits.replace(/[₀-₉]/g, (digit) => String(digit.charCodeAt(0) - '₀'.charCodeAt(0)));
