import type { CandidatePage, CandidateQuery } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';
import { type CandidateLine, candidateLine } from './candidateLine.ts';
import { readCandidate, type StoredCandidate } from './candidateRow.ts';
import type { CandidateSet, CandidateSource } from './candidateSource.ts';
import { always, both, type Condition, condition, filterOf } from './condition.ts';
import { type Place, pageKey, placeOf } from './pageKey.ts';
import { atPlaces, placesInRange } from './places.ts';
import { behind, sortedBy } from './sortedBy.ts';

/**
 * A page of candidates. Three ways lead to the same rows:
 *
 * - **walk**: along the query's order, taking rows that meet the other filters. It ends at the
 *   page's last row, which filters that many rows meet reach soon, and gives up after `readWhole`.
 * - **narrow**: where a range on a quantity with an order leaves at most `readWhole` rows, these
 *   are read and sorted.
 * - **scan**: else the search's rows are read once, and no more than a page of them is held: the
 *   worst case, for filters that are each met by many rows but together by few. Some 0.3 s for
 *   10⁶ rows.
 *
 * A search of at most `readWhole` candidates is scanned, unless the order is that of rank.
 */
export function candidatePage(
  source: CandidateSource,
  set: CandidateSet,
  query: CandidateQuery,
): Pick<CandidatePage, 'items' | 'next'> {
  const after = startOf(source, set, query);
  if (after === 'beyond the end') return { items: [], next: null };
  const wanted = query.limit + 1;
  const rows = walk(source, set, query, after, wanted) ?? sort(source, set, query, after, wanted);
  const shown = rows.slice(0, query.limit);
  return {
    items: shown.map((row) => readCandidate(row, set.columns)),
    next: rows.length === wanted ? pageKey(query, placeAt(query, shown.at(-1)!)) : null,
  };
}

/** Whether pages of this order are read along a line. */
export function isLined(source: CandidateSource, set: CandidateSet, query: CandidateQuery): boolean {
  return query.order === 'rank' || set.kept > source.readWhole;
}

/** A stretch of a line that meets a condition, as a statement. */
export function selection(line: CandidateLine, low: number, high: number, filter: Condition): Condition {
  const { sql, values, orderBy } = line.stretch({ low, high });
  const where = filter === always ? '' : ` and ${filter.sql}`;
  return condition(`select candidate.* from ${sql}${where} order by ${orderBy}`, ...values, ...filter.values);
}

/** The row behind which the page starts; null at the start of the order. */
function startOf(source: CandidateSource, set: CandidateSet, query: CandidateQuery) {
  if (query.after !== undefined) return placeOf(query, query.after);
  if (!query.at || isNumbered(source, set, query)) return null;
  // Where filters decide which row has a number, the rows before it have to be counted.
  const value = query.order === 'rank' ? 'null' : columnOf(query.order);
  const { sql, values } = sorting(source, set, query, `${value} as value, candidate.rank`);
  const row = source.connection.prepare(`${sql} limit 1 offset ?`).get(...values, query.at - 1);
  return (row as Place | undefined) ?? 'beyond the end';
}

/** Whether a row's number is its position on the line. */
function isNumbered(source: CandidateSource, set: CandidateSet, query: CandidateQuery): boolean {
  return isLined(source, set, query) && filterOf(query, query.order) === always;
}

/** The rows from behind a place, as many as wanted; null where this way does not lead there soon. */
function walk(
  source: CandidateSource,
  set: CandidateSet,
  query: CandidateQuery,
  after: Place | null,
  wanted: number,
): StoredCandidate[] | null {
  if (!isLined(source, set, query)) return null;
  const filter = filterOf(query, query.order);
  const line = candidateLine(source, set, query);
  const start = isNumbered(source, set, query) ? (query.at ?? 0) : 0;
  const low = after === null ? line.low + start : Math.max(line.low, line.behind(after));
  const high = filter === always ? line.high : Math.min(line.high, low + source.readWhole);
  const { sql, values } = selection(line, low, high, filter);
  const rows = source.connection.prepare(`${sql} limit ?`).all(...values, wanted) as StoredCandidate[];
  return rows.length === wanted || high >= line.high ? rows : null;
}

function sort(
  source: CandidateSource,
  set: CandidateSet,
  query: CandidateQuery,
  after: Place | null,
  wanted: number,
): StoredCandidate[] {
  const { sql, values } = sorting(source, set, query, 'candidate.*', after);
  return source.connection.prepare(`${sql} limit ?`).all(...values, wanted) as StoredCandidate[];
}

/** All rows that the query selects from behind a place, sorted, as a statement; of a limited one SQLite holds no more rows than the limit. */
export function sorting(
  source: CandidateSource,
  set: CandidateSet,
  query: CandidateQuery,
  columns: string,
  after: Place | null = null,
): Condition {
  const { sql, values } = narrowest(source, set, query);
  const filter = both(filterOf(query), after === null ? always : behind(query, after));
  return condition(
    `select ${columns} from ${sql} and ${filter.sql} order by ${sortedBy(query)}`,
    ...values,
    ...filter.values,
  );
}

/** The fewest rows that have all those of the query among them, as what stands behind `from`. */
function narrowest(source: CandidateSource, set: CandidateSet, query: CandidateQuery): Condition {
  let fewest = source.readWhole + 1;
  let from = condition('candidate indexed by candidate_rank where search = ?', set.search);
  if (set.kept <= source.readWhole) return from;
  for (const quantity of new Set(query.ranges.map((range) => range.quantity))) {
    const ordering = source.orderings.existing(set.search, quantity);
    if (ordering === null) continue;
    const places = placesInRange(source.connection, set, ordering, query, quantity);
    if (places.high - places.low >= fewest) continue;
    fewest = places.high - places.low;
    from = atPlaces(set, ordering, places);
  }
  return from;
}

function placeAt(query: CandidateQuery, row: StoredCandidate): Place {
  const value = query.order === 'rank' ? null : (row[columnOf(query.order)] as number | null);
  return { value, rank: row.rank };
}
