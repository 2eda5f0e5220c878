import { type Fault, fault, ProblemError } from '@tiegel/contract/terms';
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

/**
 * The symbols (with data) most like a mistyped one, at most three: that of an English name, the
 * same letters in other case or order, else the least number of letters to change, counting a
 * wrong first letter double; of equals, those that stand nearest in a dictionary.
 */
export function nearestSymbols(given: string): string[] {
  const named = elements.find(({ name }) => name.toLowerCase() === given.toLowerCase());
  if (named !== undefined) return [named.symbol];
  const ranked = symbols
    .map((symbol) => ({ symbol, distance: distance(given, symbol), gap: alphabeticalGap(given, symbol) }))
    .sort((a, b) => a.distance - b.distance || a.gap - b.gap);
  return ranked
    .filter((one) => one.distance === ranked[0]!.distance)
    .slice(0, 3)
    .map((one) => one.symbol);
}

function distance(given: string, symbol: string): number {
  const letters = given.toLowerCase();
  const wanted = symbol.toLowerCase();
  if (letters === wanted) return 0;
  if (letters.length === 2 && letters[1]! + letters[0]! === wanted) return 0.5;
  const wrongFirst = letters[0] === wanted[0] ? 0 : 2;
  const wrongSecond = (letters[1] ?? '') === (wanted[1] ?? '') ? 0 : 1;
  return wrongFirst + wrongSecond + Math.max(0, letters.length - 2);
}

/** How far apart the two stand in a dictionary, by their first two letters. */
function alphabeticalGap(given: string, symbol: string): number {
  const order = (word: string): number => (word.charCodeAt(0) || 0) * 256 + (word.charCodeAt(1) || 0);
  return Math.abs(order(given) - order(symbol));
}
