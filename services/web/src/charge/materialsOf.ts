import type { Materials } from '@tiegel/charge';
import type { MaterialView } from '@tiegel/contract';

/** The materials of the data as a list to charge from; without prices where those are in several currencies. */
export function materialsOf(stored: readonly MaterialView[]): Materials {
  const priced = stored.filter(({ price }) => price !== null);
  const currencies = new Set(priced.map(({ currency }) => currency));
  const materials = stored.map(({ name, contains, purity, price, meltingTemperature }) => ({
    ...{ name, contains, purity, meltingTemperature },
    price: currencies.size > 1 ? null : price,
  }));
  return { materials, currency: currencies.size === 1 ? (priced[0]?.currency ?? null) : null };
}
