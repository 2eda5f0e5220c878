import { demoPrices, type PriceList, readPriceList } from '@tiegel/elements';
import { readText } from './readText.ts';

/** The price list of a file (--prices), else the invented demonstration list. */
export function readPrices(file: string | undefined): PriceList {
  return file === undefined ? demoPrices : readPriceList(readText(file));
}
