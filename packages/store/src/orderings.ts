import type { CandidateQuery } from '@tiegel/contract';
import { columnOf } from './candidateColumns.ts';
import type { Connection } from './connections.ts';
import { sortedBy } from './sortedBy.ts';

/** An order of one search's candidates, kept as rows: places from 0, of which the first `valued` have a value. */
export interface Ordering {
  number: number;
  direction: CandidateQuery['direction'];
  valued: number;
}

/**
 * The orders of large searches. Each is made when it is first asked for, by one sort and one pass.
 * Two for a quantity, one a direction: equal values stand in the order of rank both ways.
 */
export interface Orderings {
  /** The order by a quantity, made when it is not there. */
  byQuantity(search: number, quantity: string, direction: CandidateQuery['direction']): Ordering;
  /** By symbols, then parts; made when it is not there. */
  byComposition(search: number): Ordering;
  /** An order by the quantity, in whichever direction there is one. */
  existing(search: number, quantity: string): Ordering | null;
}

/** What an order is called, and how its rows are found; no quantity has the name of the second, for ids begin with a letter. */
interface Kind {
  name: string;
  direction: CandidateQuery['direction'];
  counted: string;
  sort: string;
}

export function orderings(connection: Connection): Orderings {
  const find = connection.prepare(
    'select number, direction, valued from candidate_order where search = ? and name = ? and direction = ?',
  );
  const insert = connection.prepare(
    'insert into candidate_order (search, name, direction, valued) values (?, ?, ?, ?)',
  );
  const found = (search: number, name: string, direction: string) =>
    (find.get(search, name, direction) as Ordering | undefined) ?? null;

  const make = connection.transaction(
    (search: number, { name, direction, counted, sort }: Kind): Ordering => {
      const count = connection.prepare(`select count(${counted}) from candidate where search = ?`).pluck();
      const valued = count.get(search) as number;
      const { lastInsertRowid: number } = insert.run(search, name, direction, valued);
      // By way of a table whose row numbers are the places: numbering by a window function takes three times as long.
      connection.exec('create temp table if not exists ranks_in_order (rank integer not null) strict');
      connection
        .prepare(`insert into ranks_in_order select rank from candidate where search = ? order by ${sort}`)
        .run(search);
      connection
        .prepare('insert into candidate_place select ?, rowid - 1, rank from ranks_in_order order by rowid')
        .run(number);
      connection.exec('delete from ranks_in_order');
      return { number: Number(number), direction, valued };
    },
  );
  const required = (search: number, kind: Kind) =>
    found(search, kind.name, kind.direction) ?? make.immediate(search, kind);

  return {
    byQuantity(search, quantity, direction) {
      const sort = sortedBy({ order: quantity, direction });
      return required(search, { name: quantity, direction, counted: columnOf(quantity), sort });
    },
    byComposition: (search) =>
      required(search, { name: '(composition)', direction: 'asc', counted: '*', sort: 'system, parts' }),
    existing: (search, quantity) => found(search, quantity, 'asc') ?? found(search, quantity, 'desc'),
  };
}
