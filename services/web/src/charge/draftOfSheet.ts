import type { ChargeSheet } from '@tiegel/charge';
import { entryText } from '../numbers/parseNumber.ts';
import { type ChargeDraft, type ElementRow, emptyElement, type MasterRow } from './chargeDraft.ts';

/**
 * The form that gives a saved sheet again: its materials in place of those that stand in the form for
 * the same elements. Materials that the sheet did not use are not part of it.
 */
export function draftOfSheet(sheet: ChargeSheet & { name: string }, before: ChargeDraft): ChargeDraft {
  const used = new Map(
    sheet.lines.flatMap((line) => (line.element === null ? [] : [[line.element, line] as const])),
  );
  const elements = Object.keys(sheet.composition).map((symbol): [string, ElementRow] => {
    const line = used.get(symbol);
    return [
      symbol,
      {
        ...emptyElement,
        loss: entryText(sheet.loss[symbol]),
        purity: line === undefined || line.purity === 100 ? '' : entryText(line.purity),
        price: line?.price === null || line === undefined ? '' : entryText(line.price),
      },
    ];
  });
  const masters = sheet.lines
    .filter(({ element }) => element === null)
    .map(
      ({ material, contains, purity, price }): MasterRow => ({
        ...{ name: material, contains: written(contains), amounts: 'wt.%' },
        purity: purity === 100 ? '' : entryText(purity),
        price: price === null ? '' : entryText(price),
      }),
    );
  return {
    ...{ mass: entryText(sheet.mass), resolution: entryText(sheet.resolution), name: sheet.name, masters },
    currency: sheet.currency ?? '',
    elements: { ...before.elements, ...Object.fromEntries(elements) },
  };
}

/** An alloy is read with a point as the decimal sign in every language. */
export const written = (contains: Readonly<Record<string, number>>): string =>
  Object.entries(contains)
    .map(([symbol, percent]) => `${symbol}${Number(percent.toFixed(6))}`)
    .join('');
