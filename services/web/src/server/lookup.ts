import type { Named } from '@tiegel/contract';
import { printedUnit } from '@tiegel/contract/terms';
import type { ShownQuantity } from './types.ts';

/** Name and unit of a quantity by its id, as sentences need them; the id itself for one that is not known. */
export function lookupIn(
  quantities: readonly Pick<ShownQuantity, 'id' | 'name' | 'unit'>[],
  currency: string | undefined,
): (id: string) => Named {
  const byId = new Map(quantities.map((quantity) => [quantity.id, quantity]));
  return (id) => {
    const { name = id, unit = '' } = byId.get(id) ?? {};
    return { name, unit: unitText(unit, currency) };
  };
}

/** A unit as it is printed, with the currency of the price list by its name. */
export function unitText(unit: string, currency: string | undefined | null): string {
  return printedUnit(unit).replace('currency', currency ?? 'currency');
}
