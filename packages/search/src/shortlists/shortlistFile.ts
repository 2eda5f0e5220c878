import type { Shortlist, ShortlistFormat } from '@tiegel/contract';
import type { PairValue, PriceList } from '@tiegel/elements';
import { shortlistCsv } from './shortlistCsv.ts';
import { shortlistPage } from './shortlistPage.ts';

const writers = { html: shortlistPage, csv: shortlistCsv };

/** A shortlist as one file, at the prices and with the pair values given: a page that opens without the program, or a table. */
export function shortlistFile(
  list: Shortlist,
  format: ShortlistFormat,
  { prices, pairs }: { prices: PriceList | null; pairs: readonly PairValue[] },
): string {
  return writers[format](list, prices, pairs);
}
