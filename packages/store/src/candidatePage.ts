import type { CandidatePage, CandidateQuery } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';
import { type CandidateIndexes, READ_WHOLE } from './candidateIndexes.ts';
import { behind, placeColumns, type Stretch, sortedBy, stretches } from './candidateOrder.ts';
import { readCandidate, type StoredCandidate } from './candidateRow.ts';
import type { CandidateSet } from './candidateTable.ts';
import { always, both, type Condition, condition, filterOf, rangeOf } from './condition.ts';
import type { Connection } from './connections.ts';
import { type Place, pageKey, placeOf } from './pageKey.ts';

/**
 * A page of candidates. Three ways lead to the same rows:
 *
 * - **walk**: along the index of the order, taking rows that meet the filters. Ends at the page's
 *   last row, which filters that many rows meet reach soon; it gives up after READ_WHOLE rows.
 * - **narrow**: where a range on an indexed quantity leaves at most READ_WHOLE rows, these are
 *   read and sorted.
 * - **scan**: else the search's rows are read once and only a page of them is held: the worst
 *   case, for filters that are each met by many rows but together by few. Some 0.3 s for 10⁶ rows.
 *
 * A search of at most READ_WHOLE candidates is always scanned, unless the order is that of rank.
 */
export function candidatePage(
  connection: Connection,
  indexes: CandidateIndexes,
  set: CandidateSet,
  query: CandidateQuery,
): Pick<CandidatePage, 'items' | 'next'> {
  const reading = { connection, indexes, set, query };
  const indexed = query.order === 'rank' || set.kept > READ_WHOLE;
  if (indexed && query.order !== 'rank') indexes.require(set, query.order, query.direction);

  const start = startOf(reading, indexed);
  if (start === 'beyond the end') return { items: [], next: null };
  const rows = (indexed ? walk(reading, start) : null) ?? sort(reading, start);

  const shown = rows.slice(0, query.limit);
  const more = rows.length > query.limit;
  return {
    items: shown.map((row) => readCandidate(row, set.columns)),
    next: more ? pageKey(query, placeAt(query, shown.at(-1)!)) : null,
  };
}

interface Reading {
  connection: Connection;
  indexes: CandidateIndexes;
  set: CandidateSet;
  query: CandidateQuery;
}

function placeAt(query: CandidateQuery, row: StoredCandidate): Place {
  const value = query.order === 'rank' ? null : (row[columnOf(query.order)] as number | null);
  return { value, rank: row.rank };
}

/** Behind which place the page starts: null at the start of the order. */
function startOf(reading: Reading, indexed: boolean): Place | null | 'beyond the end' {
  const { query } = reading;
  if (query.after !== undefined) return placeOf(query, query.after);
  if (query.at === undefined || query.at === 0) return null;
  const unfiltered = filterOf(query, query.order) === always;
  const place =
    indexed && unfiltered ? placeInIndex(reading, query.at - 1) : placeInSort(reading, query.at - 1);
  return place ?? 'beyond the end';
}

/** The place of a row by its number from 0, from entries of the index alone. */
function placeInIndex(reading: Reading, number: number): Place | null {
  let left = number;
  for (const stretch of stretches(reading.query, null)) {
    const from = `from candidate indexed by ${stretch.index} where ${stretchOf(reading, stretch).sql}`;
    const { values } = stretchOf(reading, stretch);
    const sql = `select ${placeColumns(reading.query)} ${from} order by ${stretch.orderBy} limit 1 offset ?`;
    const place = reading.connection.prepare(sql).get(...values, left) as Place | undefined;
    if (place) return place;
    left -= reading.connection
      .prepare(`select count(*) ${from}`)
      .pluck()
      .get(...values) as number;
  }
  return null;
}

function placeInSort(reading: Reading, number: number): Place | null {
  const { sql, values } = sorted(reading, placeColumns(reading.query), always);
  return (reading.connection.prepare(`${sql} limit 1 offset ?`).get(...values, number) as Place) ?? null;
}

/** One row more than the page has, so that its end is known; null when READ_WHOLE rows did not fill it. */
function walk(reading: Reading, start: Place | null): StoredCandidate[] | null {
  const { connection, query } = reading;
  const wanted = query.limit + 1;
  const filter = filterOf(query, query.order === 'rank' ? null : query.order);
  const rows: StoredCandidate[] = [];
  for (const stretch of stretches(query, start)) {
    const { sql, values } = walking(reading, stretch, filter);
    rows.push(...(connection.prepare(sql).all(...values, wanted - rows.length) as StoredCandidate[]));
    if (rows.length === wanted) return rows;
    if (filter !== always && isLong(reading, stretch)) return null;
  }
  return rows;
}

function walking(reading: Reading, stretch: Stretch, filter: Condition): Condition {
  const range = stretchOf(reading, stretch);
  const inOrder = `select * from candidate indexed by ${stretch.index} where ${range.sql} order by ${stretch.orderBy}`;
  if (filter === always) return condition(`${inOrder} limit ?`, ...range.values);
  // The inner limit bounds the rows visited; rows leave the inner query in its order.
  const sql = `select * from (${inOrder} limit ${READ_WHOLE}) where ${filter.sql} limit ?`;
  return condition(sql, ...range.values, ...filter.values);
}

function isLong(reading: Reading, stretch: Stretch): boolean {
  const { sql, values } = stretchOf(reading, stretch);
  const beyond = `select 1 from candidate indexed by ${stretch.index} where ${sql} limit 1 offset ${READ_WHOLE}`;
  return reading.connection.prepare(beyond).get(...values) !== undefined;
}

function stretchOf(reading: Reading, stretch: Stretch): Condition {
  return both(condition('search = ?', reading.set.search), stretch.where);
}

function sort(reading: Reading, start: Place | null): StoredCandidate[] {
  const { connection, query } = reading;
  const { sql, values } = sorted(reading, '*', start ? behind(query, start) : always);
  return connection.prepare(`${sql} limit ?`).all(...values, query.limit + 1) as StoredCandidate[];
}

/** All rows that the query selects, sorted; of a limited query SQLite holds no more than the limit. */
export function sorted(reading: Reading, columns: string, start: Condition): Condition {
  const { set, query } = reading;
  const where = both(condition('search = ?', set.search), filterOf(query), start);
  return {
    sql: `select ${columns} from candidate indexed by ${narrowest(reading)} where ${where.sql} order by ${sortedBy(query)}`,
    values: where.values,
  };
}

/** The index by which the fewest rows are read: that of a narrow range, else that of the search's rows. */
function narrowest(reading: Reading): string {
  const { connection, indexes, set, query } = reading;
  let fewest = { index: 'candidate_rank', rows: READ_WHOLE };
  if (set.kept <= READ_WHOLE) return fewest.index;
  for (const quantity of new Set(query.ranges.map((range) => range.quantity))) {
    const index = indexes.on(quantity);
    if (index === null) continue;
    const { sql, values } = both(condition('search = ?', set.search), rangeOf(query, quantity));
    const some = `select 1 from candidate indexed by ${index} where ${sql} limit ${fewest.rows + 1}`;
    const rows = connection
      .prepare(`select count(*) from (${some})`)
      .pluck()
      .get(...values) as number;
    if (rows <= fewest.rows) fewest = { index, rows };
  }
  return fewest.index;
}
