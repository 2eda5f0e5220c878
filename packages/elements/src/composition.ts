import { type Fault, fault, limited, mostFaults, ProblemError } from '@tiegel/contract/terms';
import { symbolFault } from './elementSymbol.ts';
import { type Composition, inPercent, weightToAtomicPercent } from './percent.ts';

/** What the amounts of an alloy count. */
export type Measure = 'atoms' | 'weight';

/** Shares below this (at.%) would be printed as 0 with the nine decimals of a composition text. */
const leastShare = 0.5e-9;

/** Larger amounts are refused, so that no sum overflows. */
const largestAmount = 1e15;
/** Smaller ones are refused, so that no quotient of two amounts overflows and none divided by a mass is 0. */
const smallestAmount = 1e-100;

/**
 * Turns amounts of any total into at.%, symbols alphabetical.
 * @param amounts by symbol, from 1e-100 to 1e15; counted as `by` says
 * @param pointer JSON pointer of the amounts in the request
 * @throws ProblemError with every fault, up to a hundred: alloy/empty, element/unknown, element/no-data,
 *   alloy/amount, alloy/share-too-small
 */
export function compositionOf(
  amounts: Readonly<Record<string, number>>,
  { by = 'atoms', pointer = '' }: { by?: Measure; pointer?: string } = {},
): Composition {
  const pointerTo = (symbol: string): string =>
    `${pointer}/${symbol.replaceAll('~', '~0').replaceAll('/', '~1')}`;
  const faults: Fault[] = [];
  for (const symbol of Object.keys(amounts)) {
    const pointer = pointerTo(symbol);
    const found = symbolFault(symbol, pointer) ?? amountFault(symbol, amounts[symbol]!, pointer);
    if (found !== null) faults.push(found);
    // To look for what was meant by each of fifty thousand names took seconds.
    if (faults.length > mostFaults) break;
  }
  if (faults.length > 0) throw new ProblemError(limited(faults));
  return normalised(amounts, by, pointer);
}

/** What is wrong with an amount, null where it is one that can be computed with; `where` as it is put behind the symbol. */
export function amountFault(symbol: string, amount: number, pointer: string, where = ''): Fault | null {
  if (amount >= smallestAmount && amount <= largestAmount) return null;
  return fault('alloy/amount', { symbol, amount: String(amount), where }, pointer);
}

/** Amounts of known elements, each above 0, in at.%; throws alloy/empty and alloy/share-too-small. */
export function normalised(
  amounts: Readonly<Record<string, number>>,
  by: Measure,
  pointer: string,
): Composition {
  const composition = by === 'atoms' ? inPercent(amounts) : weightToAtomicPercent(amounts);
  const faults = Object.keys(composition)
    .filter((symbol) => composition[symbol]! < leastShare)
    .map((symbol) => fault('alloy/share-too-small', { symbol }, pointer));
  if (Object.keys(composition).length === 0) faults.push(fault('alloy/empty', {}, pointer));
  if (faults.length > 0) throw new ProblemError(faults);
  return composition;
}
