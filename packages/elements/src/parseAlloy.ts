import { type Fault, fault, ProblemError } from '@tiegel/contract/terms';
import { capitalised } from './alloyText/capitalised.ts';
import { isDecimalSign, withDecimalPoints } from './alloyText/decimalSigns.ts';
import { massPerCent } from './alloyText/massPerCent.ts';
import { counted, type Item, readItems, type Stop } from './alloyText/readItems.ts';
import { amountFault, type Measure, normalised } from './composition.ts';
import { symbolFault } from './elementSymbol.ts';
import type { Composition } from './percent.ts';

const lengthLimit = 1000;

/**
 * Reads an alloy: symbols with optional decimal amounts, spaces allowed, such as
 * 'Al7.69Co30.77Fe61.54', 'AlCoCrFeNi', 'Co20 Cr20 Fe20 Mn20 Ni20', 'Al₀.₃CoCrFeNi'. Amounts may have
 * any total; the answer is in at.%, normalised to 100, symbols alphabetical. A bracket with an amount
 * behind it, as in '(CoCrFeNi)94Al6', counts that amount in all, and what is in it shares it; without
 * one it counts the sum of what is in it.
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
  const { items, stop } = readItems(text);
  const faults = itemFaults(stop === null ? items : withoutHalf(items, text, stop), pointer, new Map());
  if (stop !== null) faults.push(unreadable(text, stop, by, pointer));
  if (faults.length > 0) throw new ProblemError(faults);
  return normalised(Object.fromEntries(amountsOf(items, 1)), by, pointer);
}

/** Of Al0,5 the 0 is half an amount: that it is not possible would be said of what nobody wrote. */
function withoutHalf(items: readonly Item[], text: string, { index }: Stop): readonly Item[] {
  const last = items.at(-1);
  return last !== undefined && isDecimalSign(text, index)
    ? [...items.slice(0, -1), { ...last, amount: null }]
    : items;
}

/** The amount of each symbol; `factor` is what one unit inside the bracket around them counts outside it. */
function amountsOf(items: readonly Item[], factor: number): [string, number][] {
  return items.flatMap((item): [string, number][] => {
    if (item.symbol !== null) return [[item.symbol, counted(item) * factor]];
    const inside = counted({ ...item, amount: null });
    return amountsOf(item.items, item.amount === null ? factor : (factor * item.amount) / inside);
  });
}

/** @param seen where each symbol stood first, in brackets or outside */
function itemFaults(items: readonly Item[], pointer: string, seen: Map<string, number>): Fault[] {
  return items.flatMap(({ symbol, items: inner, amount, place }) => {
    const where = ` (character ${place})`;
    if (symbol === null) {
      const wrong = amountFault('the bracket', amount ?? 1, pointer, where);
      return [...itemFaults(inner, pointer, seen), ...(wrong === null ? [] : [wrong])];
    }
    const unknown = symbolFault(symbol, pointer, where);
    if (unknown !== null) return [unknown];
    const first = seen.get(symbol);
    if (first !== undefined) return [fault('alloy/repeated-element', { symbol, first, place }, pointer)];
    seen.set(symbol, place);
    return amountFault(symbol, amount ?? 1, pointer, where) ?? [];
  });
}

function unreadable(text: string, { index, found }: Stop, by: Measure, pointer: string): Fault {
  const values = { alloy: shortened(text), place: index + 1, found, right: rightFor(text, index, by) };
  return fault('alloy/unreadable', values, pointer);
}

/** What would be right, as a sentence; '' where the text does not tell. */
function rightFor(text: string, index: number, by: Measure): string {
  if (/[a-z]/.test(text[index]!)) {
    const meant = capitalised(text);
    if (meant === null || readItems(meant).stop !== null) return '';
    return `Begin every symbol with a capital letter: ${meant.trim()}.`;
  }
  if (isDecimalSign(text, index)) {
    const meant = withDecimalPoints(text);
    return readItems(meant).stop === null ? `Write decimals with a point: ${shortened(meant.trim())}.` : '';
  }
  const mass = massPerCent(text);
  if (mass === null) return '';
  return by === 'weight'
    ? `Write ${mass.byWeight}.`
    : `Write at.%, here ${mass.byAtoms}; in mass per cent it is ${mass.byWeight}, which the terminal reads with --wt.`;
}

const shortened = (text: string): string => (text.length > 80 ? `${text.slice(0, 80)}…` : text);
