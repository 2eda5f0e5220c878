/** Prices of the pure elements, one currency a list. What a price is not: that of a master alloy, of a purity, of what is lost in melting. */
export interface PriceList {
  currency: string;
  /** ISO 8601 date of the newest entry */
  date: string;
  /** true for the demonstration list that comes with the project */
  invented: boolean;
  /** by symbol; currency per kilogram */
  prices: Record<string, { pricePerKilogram: number; date: string; source: string }>;
}
