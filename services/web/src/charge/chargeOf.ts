import { type ChargeSheet, chargeRequestOf, chargeSheet, type MaterialEntry } from '@tiegel/charge';
import { longestName, ProblemError } from '@tiegel/contract/terms';
import type { OwnPair } from '@tiegel/elements';
import type { PlacedFaults } from '../ask/faults/placeFaults.ts';
import { parseNumber } from '../numbers/parseNumber.ts';
import type { PricesView } from '../server/types.ts';
import { type ChargeDraft, type ElementRow, emptyElement, type MasterRow } from './chargeDraft.ts';

/** What is sent to be kept. */
export interface ChargeBody {
  composition: Record<string, number>;
  mass: number;
  resolution: number;
  loss: Record<string, number>;
  materials: MaterialEntry[];
  currency: string | null;
  name: string;
}

/** A charge as the form asks for it: its sheet, or what is wrong, by the field where it stands. */
export interface Charged {
  body: ChargeBody;
  sheet: ChargeSheet | null;
  faults: PlacedFaults;
}

/** Where a material of the request stands in the form. */
type Place = `/elements/${string}` | `/masters/${number}`;

/**
 * The sheet of a form, worked out in this browser: no connection is needed.
 * @param pairs pair values in force that were brought in, for the cautions
 */
export function chargeOf(
  composition: Record<string, number>,
  draft: ChargeDraft,
  prices: PricesView,
  pairs: readonly OwnPair[] = [],
): Charged {
  const placed = new Map<string, string[]>();
  const add = (pointer: string, text: string) => placed.set(pointer, [...(placed.get(pointer) ?? []), text]);
  const number = (pointer: string, text: string): number | null => {
    const parsed = parseNumber(text);
    if ('unclear' in parsed) add(pointer, parsed.unclear);
    return 'value' in parsed ? parsed.value : null;
  };
  const needed = (pointer: string, text: string): number => {
    const value = number(pointer, text);
    if (value === null && !placed.has(pointer)) add(pointer, 'Write a number of grams.');
    return value ?? Number.NaN;
  };

  const symbols = Object.keys(composition);
  // Prices of another currency would be added to those of the list as if they were the same.
  const listed = prices?.currency === currencyOf(draft, prices) ? prices : null;
  const rows = symbols.map((symbol) => [symbol, draft.elements[symbol] ?? emptyElement] as const);
  const places: Place[] = [];
  const materials: MaterialEntry[] = [];
  for (const [symbol, row] of rows.filter(([, { absent }]) => !absent)) {
    places.push(`/elements/${symbol}`);
    materials.push(
      elementEntry(symbol, row, listed, (key, text) => number(`/elements/${symbol}/${key}`, text)),
    );
  }
  draft.masters.forEach((row, at) => {
    if (isBlank(row)) return;
    if (row.name.trim() === '' && row.contains.trim() === '') {
      add(`/masters/${at}/contains`, 'Write what is in it, such as Fe34Nb66, or remove this material.');
      return;
    }
    places.push(`/masters/${at}`);
    materials.push(masterEntry(row, (key, text) => number(`/masters/${at}/${key}`, text)));
  });
  const losses = rows.flatMap(([symbol, { loss }]) => {
    const value = number(`/elements/${symbol}/loss`, loss);
    return value === null || value === 0 ? [] : [[symbol, value] as const];
  });
  const body: ChargeBody = {
    composition,
    mass: needed('/mass', draft.mass),
    resolution: needed('/resolution', draft.resolution),
    loss: Object.fromEntries(losses),
    materials,
    currency: currencyOf(draft, prices),
    name: draft.name,
  };
  if (draft.name.length > longestName)
    add('/name', `This has ${draft.name.length} characters; at most ${longestName} are kept. Shorten it.`);
  if (placed.size > 0) return { body, sheet: null, faults: placed };
  try {
    return { body, sheet: chargeSheet({ ...chargeRequestOf(body, prices), pairs }), faults: placed };
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    for (const { pointer, detail, remedy } of error.faults)
      add(inForm(pointer, places), `${detail} ${remedy}`);
    return { body, sheet: null, faults: placed };
  }
}

/** The currency of everything that is charged; null where there is no price at all. */
export function currencyOf({ currency }: ChargeDraft, prices: PricesView): string | null {
  return currency === '' ? (prices?.currency ?? null) : currency;
}

type Read = (key: 'purity' | 'price', text: string) => number | null;

/** An element as it is bought; the price of the list holds where none was typed. */
function elementEntry(symbol: string, row: ElementRow, prices: PricesView, read: Read): MaterialEntry {
  const purity = read('purity', row.purity) ?? 100;
  return {
    // A purity that is not possible is told as that of the element.
    name: purity > 0 && purity < 100 ? `${symbol} ${purity} %` : symbol,
    purity,
    price: read('price', row.price) ?? prices?.prices[symbol]?.pricePerKilogram ?? null,
  };
}

function masterEntry({ name, contains, amounts, purity, price }: MasterRow, read: Read): MaterialEntry {
  return {
    // A master alloy that has no name yet is called by what it holds.
    name: name.trim() === '' ? contains.trim() : name,
    contains: contains.trim(),
    amounts,
    purity: read('purity', purity) ?? 100,
    price: read('price', price),
  };
}

/** A row that was added and not filled in is not there yet. */
const isBlank = ({ name, contains, purity, price }: MasterRow): boolean =>
  [name, contains, purity, price].every((text) => text.trim() === '');

/** The field of the form that a pointer into the request means. */
function inForm(pointer: string, places: readonly Place[]): string {
  const [, key, entry = '', ...rest] = pointer.split('/');
  if (key === 'loss') return `/elements/${entry}/loss`;
  if (key !== 'materials' || entry === '') return pointer;
  const place = places[Number(entry)];
  const field = rest[0] === 'amounts' ? 'contains' : (rest[0] ?? 'contains');
  return place === undefined ? '/materials' : `${place}/${field}`;
}
