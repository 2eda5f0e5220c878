import { inventedPrices } from './data/inventedPrices.ts';
import type { PriceList } from './priceList.ts';

const date = '2026-11-25';
const source = 'invented for demonstration';

/** The list in force until a lab brings its own: invented, says so in every entry, EUR/kg. */
export const demoPrices: PriceList = {
  currency: 'EUR',
  date,
  invented: true,
  prices: Object.fromEntries(
    inventedPrices.map(([symbol, pricePerKilogram]) => [symbol, { pricePerKilogram, date, source }]),
  ),
};
