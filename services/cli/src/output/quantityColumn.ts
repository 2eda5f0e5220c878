import { fixedDecimals, printedUnit } from '@tiegel/contract/terms';
import type { PriceList } from '@tiegel/elements';
import { type Quantity, quantityById } from '@tiegel/screening';
import type { Column } from './table.ts';

/** Unit of a quantity as people read it (g/cm³), with the currency of the price list. */
export function unitOf({ unit }: Pick<Quantity, 'unit'>, prices: Pick<PriceList, 'currency'> | null): string {
  return printedUnit(unit).replace('currency', prices?.currency ?? 'currency');
}

/** Head of a column that shows a quantity: symbol and unit. */
export function quantityColumn(
  id: string,
  prices: Pick<PriceList, 'currency'> | null,
  more: readonly Printed[] = [],
): Column {
  const quantity = printed(id, more);
  return { head: quantity.symbol, unit: unitOf(quantity, prices) };
}

/** A value with the decimals that mean something; null where there is none. */
export function shownValue(
  id: string,
  value: number | null | undefined,
  more: readonly Printed[] = [],
): string | null {
  return value === null || value === undefined ? null : fixedDecimals(value, printed(id, more).decimals);
}

/** How a quantity is printed; a search has some that the registry does not know. */
type Printed = Pick<Quantity, 'id' | 'symbol' | 'unit' | 'decimals'>;

function printed(id: string, more: readonly Printed[]): Printed {
  return more.find((quantity) => quantity.id === id) ?? quantityById(id);
}
