import type { Amounts } from '@tiegel/contract';
import { formatComposition } from '@tiegel/elements';
import { parseNumber } from '../../numbers/parseNumber.ts';
import { readAlloyText } from '../entry/readAlloyText.ts';

/** Amounts as they were typed; `balance` is the element that takes what the others leave of 100. */
export interface Editor {
  rows: readonly { symbol: string; text: string }[];
  balance: string | null;
}

export interface ReadEditor {
  /** by symbol: the amount, null where there is none or it cannot be read */
  amounts: Record<string, number | null>;
  /** by symbol: what is wrong with an amount */
  faults: Record<string, string>;
  /** of the amounts that can be read */
  total: number;
  /** at.%, 100 in sum; null while something cannot be read or nothing is there */
  composition: Amounts | null;
}

/** Decimals of an amount in its field: enough for a seventh of everything. */
const fieldDecimals = 4;
/** Sums closer to 100 are 100: a third three times over. */
export const nearlyWhole = 0.001;

/** The editor of a composition; texts with this decimal sign. */
export function editorOf(composition: Amounts, write: (value: number) => string): Editor {
  const rows = Object.keys(composition)
    .sort()
    .map((symbol) => ({ symbol, text: write(Number(composition[symbol]!.toFixed(fieldDecimals))) }));
  return { rows, balance: null };
}

export function readEditor({ rows, balance }: Editor): ReadEditor {
  const amounts: Record<string, number | null> = {};
  const faults: Record<string, string> = {};
  for (const { symbol, text } of rows) {
    if (symbol === balance) continue;
    const read = parseNumber(text);
    amounts[symbol] = 'value' in read ? read.value : null;
    if ('unclear' in read) faults[symbol] = read.unclear;
    else if (read.value !== null && read.value < 0) {
      amounts[symbol] = null;
      faults[symbol] = 'An amount is never below 0.';
    }
  }
  const sum = () => Object.values(amounts).reduce<number>((total, amount) => total + (amount ?? 0), 0);
  if (balance !== null) {
    const rest = Number((100 - sum()).toFixed(9));
    if (rest >= 0) amounts[balance] = rest;
    else faults[balance] = 'The others make up more than 100 at.% already.';
  }
  const total = Number(sum().toFixed(9));
  return { amounts, faults, total, composition: compositionOf(amounts, faults, total) };
}

function compositionOf(
  amounts: Record<string, number | null>,
  faults: Record<string, string>,
  total: number,
): Amounts | null {
  if (Object.keys(faults).length > 0 || total <= 0) return null;
  const present = Object.entries(amounts).filter(([, amount]) => (amount ?? 0) > 0);
  return readAlloyText(formatComposition(Object.fromEntries(present) as Amounts)).composition;
}

/** An amount one step up or down, never below 0; on the grid of the step where it was on it. */
export function stepped(amount: number | null, step: number, direction: 1 | -1): number {
  return Math.max(0, Number(((amount ?? 0) + direction * step).toFixed(6)));
}

/** Every amount as its share of the sum, so that they make 100. */
export function normalised(editor: Editor, write: (value: number) => string): Editor {
  const { composition } = readEditor(editor);
  return composition === null ? editor : editorOf(composition, write);
}
