import { type ChargeSheet, chargeNumber, numberOfCharge } from '@tiegel/charge';
import { problem } from '@tiegel/contract/terms';
import { dataVersionOf, type PairValue, type PriceList } from '@tiegel/elements';
import type { ChargeSheetTable, StoredChargeSheet } from '@tiegel/store';

/** A charge sheet under its number, with what it was worked out from. */
export interface SavedChargeSheet extends ChargeSheet {
  /** as it is written on paper: C-0007 */
  number: string;
  /** UTC, ISO 8601 */
  savedAt: string;
  /** whose token it was saved with; null: nobody was asked */
  by: string | null;
  /** what it is for */
  name: string;
  /** as it was asked for */
  request: Record<string, unknown>;
  dataVersion: string;
  /** the price list that was in force */
  prices: Pick<PriceList, 'currency' | 'date' | 'invented'> | null;
}

/** What is kept beside a sheet. */
interface SheetOrigin {
  name: string;
  by?: string | null;
  request: Record<string, unknown>;
  /** what was in force */
  prices: PriceList | null;
  pairs: readonly PairValue[];
}

/** Charge sheets under numbers that a melt refers to; none is ever changed. */
export interface ChargeSheets {
  /** The same key, sent again because the answer was lost, gives the sheet that it kept the first time. */
  save(sheet: ChargeSheet, origin: SheetOrigin, key?: string | null): SavedChargeSheet;
  /** @param number 'C-0007', 'c7' or '7' @throws ProblemError charge/not-found, pointed at as `pointer` */
  view(number: string, pointer?: string): SavedChargeSheet;
  /** The newest first. */
  list(): SavedChargeSheet[];
}

type Kept = Omit<SavedChargeSheet, 'number' | 'savedAt'>;

export function openChargeSheets(table: ChargeSheetTable): ChargeSheets {
  return {
    save(sheet, { name, by = null, request, prices, pairs }, key = null) {
      const kept: Kept = {
        ...sheet,
        ...{ name: name.trim(), by, request, dataVersion: dataVersionOf(prices, [], pairs) },
        prices: prices && { currency: prices.currency, date: prices.date, invented: prices.invented },
      };
      return savedOf(table.save(kept, new Date().toISOString(), key).stored);
    },
    view(number, pointer = '') {
      const found = numberOfCharge(number);
      const stored = found === null ? null : table.find(found);
      if (stored === null) throw problem('charge/not-found', { number: number.slice(0, 20) }, pointer);
      return savedOf(stored);
    },
    list: () => table.list().map(savedOf),
  };
}

function savedOf({ number, savedAt, sheet }: StoredChargeSheet): SavedChargeSheet {
  const kept = sheet as Omit<Kept, 'by'> & Partial<Kept>;
  // What was saved before anybody was asked says nothing of it.
  return { number: chargeNumber(number), savedAt, ...kept, by: kept.by ?? null };
}
