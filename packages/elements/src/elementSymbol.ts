import { editDistance, type Fault, fault, nearest, ProblemError } from '@tiegel/contract/terms';
import { elementOf, elements, isAvailable, symbols } from './periodicTable.ts';

/**
 * What is wrong with a symbol, null where it is an element with data. `pointer` says where it
 * stands in the request, `where` is put behind it in the text, as in ' (character 3)'.
 */
export function symbolFault(symbol: string, pointer: string, where = ''): Fault | null {
  if (isAvailable(symbol)) return null;
  const element = elementOf(symbol);
  if (element !== null) return fault('element/no-data', { symbol, name: element.name, where }, pointer);
  const near = nearestSymbols(symbol).join(', ');
  return fault('element/unknown', { symbol: symbol.slice(0, 20), where, near }, pointer);
}

/** @throws ProblemError with a fault for every symbol that is no element with data; the pointer of the n-th is `${pointer}/n`. */
export function requireElements(given: readonly string[], pointer = ''): void {
  const faults = given.flatMap((symbol, index) => symbolFault(symbol, `${pointer}/${index}`) ?? []);
  if (faults.length > 0) throw new ProblemError(faults);
}

const names = elements.map(({ name }) => name);

/**
 * The symbols (with data) that a mistyped one may stand for, at most three, or none: that of an
 * English name, or one much like it; the same letters in other case; else those that one letter put in, left out, changed
 * or exchanged with its neighbour makes of it, in any case, and that share a letter with it. The first
 * letter is the surest; of equals, those come first that stand nearest in a dictionary.
 */
export function nearestSymbols(given: string): string[] {
  const letters = given.toLowerCase();
  const same = symbols.find((symbol) => symbol.toLowerCase() === letters);
  if (same !== undefined) return [same];
  if (letters.length > 3) {
    const name = nearest(letters, names);
    return elements.filter((element) => element.name === name).map(({ symbol }) => symbol);
  }
  return symbols
    .filter((symbol) => isOneEditAway(letters, symbol.toLowerCase()))
    .map((symbol) => ({ symbol, distance: distance(letters, symbol), gap: alphabeticalGap(given, symbol) }))
    .sort((a, b) => a.distance - b.distance || a.gap - b.gap)
    .filter((one, _, ranked) => one.distance === ranked[0]!.distance)
    .slice(0, 3)
    .map((one) => one.symbol);
}

function isOneEditAway(letters: string, wanted: string): boolean {
  return editDistance(letters, wanted) === 1 && [...wanted].some((letter) => letters.includes(letter));
}

function distance(letters: string, symbol: string): number {
  const wanted = symbol.toLowerCase();
  if (letters.length === 2 && letters[1]! + letters[0]! === wanted) return 0;
  return letters[0] === wanted[0] ? 1 : 2;
}

/** How far apart the two stand in a dictionary, by their first two letters. */
function alphabeticalGap(given: string, symbol: string): number {
  const order = (word: string): number => (word.charCodeAt(0) || 0) * 256 + (word.charCodeAt(1) || 0);
  return Math.abs(order(given) - order(symbol));
}
