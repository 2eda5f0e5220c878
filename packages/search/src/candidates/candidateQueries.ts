import type { CandidateQuery } from '@tiegel/contract';
import { type Fault, fault, ProblemError, problem } from '@tiegel/contract/terms';
import { parseAlloy } from '@tiegel/elements';
import { gridOf } from '@tiegel/engine';
import type { CandidateSet, SearchRecord } from '@tiegel/store';
import { type StoredNames, storedNames } from './candidateColumns.ts';
import { unknownColumn } from './unknownColumn.ts';

/** At most so many candidates a page. */
const longestPage = 1000;

/** Whose candidates a search has, and how the store calls their quantities. Throws search/not-finished while it has none. */
export function candidateSet({ number, state, kept, columns }: SearchRecord): {
  set: CandidateSet;
  names: StoredNames;
} {
  if (state !== 'done') throw problem('search/not-finished', { state });
  const names = storedNames(columns);
  return { set: { search: number, kept, columns: names.all, ids: columns }, names };
}

const withoutFront = {
  what: 'This search asked for no Pareto front, so that none of its candidates is marked',
  right: 'Ask without it, or search anew with a "front" in the specification.',
};

type Checked = Pick<SearchRecord, 'columns' | 'specification'>;

/** Throws request/invalid and request/after-and-at with every fault of a query on candidates that have these quantities. */
export function checkQuery(query: CandidateQuery, { columns, specification }: Checked): void {
  const { front, ranges, order, limit, after, at } = query;
  const invalid = (what: string, pointer: string) => fault('request/invalid', { what }, pointer);
  const whole = (value: number, least: number, most: number) =>
    Number.isSafeInteger(value) && value >= least && value <= most;
  const faults: Fault[] = [
    ...(front && !specification.front ? [fault('request/invalid', withoutFront, '/front')] : []),
    ...ranges.flatMap(({ quantity }, place) =>
      columns.includes(quantity) ? [] : [unknownColumn(quantity, columns, `/ranges/${place}/quantity`)],
    ),
    ...(order === 'rank' || columns.includes(order) ? [] : [unknownColumn(order, columns, '/order')]),
    ...(whole(limit, 1, longestPage)
      ? []
      : [invalid(`"limit" is not a whole number from 1 to ${longestPage}`, '/limit')]),
    ...(at === undefined || whole(at, 0, Number.MAX_SAFE_INTEGER)
      ? []
      : [invalid('"at" is not a whole number from 0', '/at')]),
    ...(after !== undefined && at !== undefined ? [fault('request/after-and-at', {}, '/at')] : []),
  ];
  if (faults.length > 0) throw new ProblemError(faults);
}

/**
 * A composition as the integers of a search's grid; null for one that does not lie on it. Throws
 * as parseAlloy does for a text that is no alloy.
 */
export function gridParts(
  composition: string,
  { specification }: SearchRecord,
): { symbols: string[]; parts: number[] } | null {
  const shares = parseAlloy(composition);
  const symbols = Object.keys(shares).sort();
  const total = gridOf(specification).total ?? symbols.length;
  const amounts = symbols.map((symbol) => (shares[symbol]! * total) / 100);
  const parts = amounts.map(Math.round);
  // The text of a composition has nine decimals.
  const onGrid = amounts.every((amount, place) => Math.abs(amount - parts[place]!) < 1e-6);
  return onGrid ? { symbols, parts } : null;
}
