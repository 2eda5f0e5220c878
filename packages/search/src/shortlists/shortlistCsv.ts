import type { Shortlist } from '@tiegel/contract';
import type { PairValue, PriceList } from '@tiegel/elements';
import { quantities } from '@tiegel/screening';
import { stringify } from 'csv-stringify/sync';
import { shortlistLines } from './shortlistLines.ts';

/** A shortlist as CSV: composition, how far it is, who added it and when, notes, every quantity with its unit. */
export function shortlistCsv(
  list: Shortlist,
  prices: PriceList | null,
  pairs: readonly PairValue[] = [],
): string {
  const currency = prices?.currency ?? 'currency';
  const heads = quantities.map(({ id, unit }) =>
    unit === '' ? id : `${id} (${unit.replace('currency', currency)})`,
  );
  const rows = shortlistLines(list, prices, pairs).map((line) => [
    line.entry,
    line.status.value,
    line.addedBy,
    line.addedAt,
    line.search ?? '',
    line.notes.map(({ text, by, at }) => `${at} ${by}: ${text}`).join('\n'),
    line.phase.singleSolution ?? '',
    ...quantities.map(({ id }) => line.quantities[id] ?? ''),
  ]);
  const head = [
    'composition (at.%)',
    'status',
    'added by',
    'added at',
    'search',
    'notes',
    'one solid solution',
  ];
  return stringify([[...head, ...heads], ...rows], { escape_formulas: true });
}
