import type { MaterialEntry } from '@tiegel/charge';
import type { Composition } from '@tiegel/elements';
import type { MaterialInForce } from './imports.ts';

/**
 * Of the materials in force those that an alloy can be charged from: own ones whose elements are all
 * in it, and pure ones of elements that no own one is alone. A price in another currency than the
 * one of all is unknown: it cannot be added up.
 * @param usual the currency of the price list; null: that of the first own material with a price
 */
export function materialsFor(
  composition: Composition,
  inForce: readonly MaterialInForce[],
  usual: string | null,
): { materials: MaterialEntry[]; currency: string | null } {
  const fitting = inForce.filter(({ contains }) => Object.keys(contains).every((one) => one in composition));
  const own = fitting.filter((one) => one.import !== null);
  const alone = new Set(own.flatMap(({ contains }) => onlyOne(Object.keys(contains))));
  const pure = fitting.filter(
    (one) => one.import === null && !Object.keys(one.contains).some((symbol) => alone.has(symbol)),
  );
  const used = [...own, ...pure];
  const currency = usual ?? used.find((one) => one.currency !== null)?.currency ?? null;
  const materials = used.map(({ name, contains, purity, price, currency: paid, meltingTemperature }) => ({
    ...{ name, contains, purity, meltingTemperature, amounts: 'wt.%' as const },
    price: paid === currency ? price : null,
  }));
  return { materials, currency };
}

const onlyOne = (symbols: readonly string[]): readonly string[] => (symbols.length === 1 ? symbols : []);
