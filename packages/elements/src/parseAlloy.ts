import { type Fault, fault, ProblemError } from '@tiegel/contract/terms';
import { amountFault, type Measure, normalised } from './composition.ts';
import { symbolFault } from './elementSymbol.ts';
import type { Composition } from './percent.ts';

const lengthLimit = 1000;

/** A symbol as it was written, with its amount (1 where none was) and the character, from 1, at which it begins. */
interface Part {
  symbol: string;
  amount: number;
  place: number;
}

/**
 * Reads an alloy: symbols with optional decimal amounts, spaces allowed, such as
 * 'Al7.69Co30.77Fe61.54', 'AlCoCrFeNi', 'Co20 Cr20 Fe20 Mn20 Ni20'. Amounts may have any total;
 * the answer is in at.%, normalised to 100, symbols alphabetical.
 * @param by whether the amounts count atoms or weight
 * @param pointer JSON pointer of the text in the request
 * @throws ProblemError with every fault, each naming its character: alloy/too-long, alloy/empty,
 *   alloy/unreadable, element/unknown, element/no-data, alloy/repeated-element, alloy/amount,
 *   alloy/share-too-small
 */
export function parseAlloy(
  text: string,
  { by = 'atoms', pointer = '' }: { by?: Measure; pointer?: string } = {},
): Composition {
  if (text.length > lengthLimit) {
    throw new ProblemError([fault('alloy/too-long', { length: text.length, limit: lengthLimit }, pointer)]);
  }
  const { parts, rest } = readParts(text);
  const faults = partFaults(parts, pointer);
  if (rest < text.length) faults.push(unreadable(text, rest, pointer));
  if (faults.length > 0) throw new ProblemError(faults);
  return normalised(Object.fromEntries(parts.map(({ symbol, amount }) => [symbol, amount])), by, pointer);
}

/** The parts up to the first character that cannot be read; `rest` is its index, the text's length where all was read. */
function readParts(text: string): { parts: Part[]; rest: number } {
  const part = /\s*([A-Z][a-z]?)(?:\s*(\d+(?:\.\d+)?|\.\d+))?\s*/y;
  const parts: Part[] = [];
  let rest = /^\s*/.exec(text)![0].length;
  part.lastIndex = rest;
  for (let found = part.exec(text); found !== null; found = part.exec(text)) {
    parts.push({ symbol: found[1]!, amount: Number(found[2] ?? 1), place: rest + 1 });
    rest = part.lastIndex;
  }
  return { parts, rest };
}

function partFaults(parts: readonly Part[], pointer: string): Fault[] {
  const seen = new Map<string, number>();
  return parts.flatMap(({ symbol, amount, place }) => {
    const where = ` (character ${place})`;
    const unknown = symbolFault(symbol, pointer, where);
    if (unknown !== null) return [unknown];
    const first = seen.get(symbol);
    if (first !== undefined) return [fault('alloy/repeated-element', { symbol, first, place }, pointer)];
    seen.set(symbol, place);
    return amountFault(symbol, amount, pointer, where) ?? [];
  });
}

function unreadable(text: string, index: number, pointer: string): Fault {
  const character = String.fromCodePoint(text.codePointAt(index)!);
  return fault(
    'alloy/unreadable',
    { alloy: shortened(text), place: index + 1, found: explained(character) },
    pointer,
  );
}

function explained(character: string): string {
  if (character === ',')
    return '"," is no decimal sign here and separates nothing; decimals are written with a point';
  if (character === '-' || character === '−')
    return `"${character}" has no meaning here; amounts are positive`;
  if (/[a-z]/.test(character))
    return `"${character}" begins no symbol; a symbol begins with a capital letter`;
  if (/[0-9]/.test(character)) return `"${character}" is an amount without a symbol before it`;
  return `"${character}" is neither a symbol nor an amount`;
}

const shortened = (text: string): string => (text.length > 80 ? `${text.slice(0, 80)}…` : text);
