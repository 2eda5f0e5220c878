import { readFileSync } from 'node:fs';
import { type PriceList, readPriceList } from '@tiegel/elements';
import type { Found } from '../independent/exhaustive.ts';

/** One of the paths on which a specification becomes candidates. All must find the same. */
export interface Variant {
  /** `file` holds the specification as it is written. */
  find(file: URL): Promise<Found>;
  close?(): Promise<void>;
}

export const pricesFile = new URL('../../fixtures/independent/prices.csv', import.meta.url);

/** The invented price list that the plain search reads, too. */
export const prices: PriceList = readPriceList(readFileSync(pricesFile, 'utf8'));

/** A composition as the plain search writes it. */
export function written(composition: Readonly<Record<string, number>>): string {
  return Object.entries(composition)
    .map(([symbol, share]) => symbol + Number(share.toFixed(9)))
    .join(' ');
}
