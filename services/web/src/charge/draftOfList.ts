import { type Materials, readMaterials } from '@tiegel/charge';
import { symbols } from '@tiegel/elements';
import { entryText } from '../numbers/parseNumber.ts';
import { type ChargeDraft, emptyElement, type MasterRow } from './chargeDraft.ts';
import { written } from './draftOfSheet.ts';

/**
 * The form with a list of materials (CSV) as all there is to charge from: no element is on the shelf as
 * a metal of its own unless the list has it. Expected losses stay.
 * @throws ProblemError as readMaterials of packages/charge does
 */
export function draftOfList(csv: string, before: ChargeDraft): ChargeDraft {
  const elements = symbols.map((symbol) => [
    symbol,
    { ...emptyElement, loss: before.elements[symbol]?.loss ?? '', absent: true },
  ]);
  return { ...withMaterials(readMaterials(csv), before), elements: Object.fromEntries(elements) };
}

/** The form with these materials beside the metals that are on the shelf. */
export function withMaterials({ materials, currency }: Materials, before: ChargeDraft): ChargeDraft {
  const masters = materials.map(
    ({ name, contains, purity, price }): MasterRow => ({
      ...{ name, contains: written(contains), amounts: 'wt.%' },
      purity: purity === 100 ? '' : entryText(purity),
      price: price === null ? '' : entryText(price),
    }),
  );
  return { ...before, masters, currency: currency ?? '' };
}
