import type { Connection } from './connections.ts';

/** Columns of element data that a person entered, by id, as JSON values whose meaning is not the store's. */
export interface OwnColumns {
  /** Keeps a column, in the place of one with its id; it is on the disk when this returns. */
  enter(id: string, column: unknown, at: string): void;
  /** Takes the column out of force; false where there was none. Searches that were planned with it keep it. */
  remove(id: string, at: string): boolean;
  /** The columns in force, in the order in which they were first entered. */
  inForce(): unknown[];
}

export function ownColumns(durable: Connection): OwnColumns {
  const insert = durable.prepare('insert into own_column (id, entered_at, "column") values (?, ?, ?)');
  const inForce = durable
    .prepare(
      `select "column" from own_column as newest
       where number = (select max(number) from own_column where id = newest.id) and "column" is not null
       order by (select min(number) from own_column where id = newest.id)`,
    )
    .pluck();
  const latest = durable
    .prepare('select "column" from own_column where id = ? order by number desc limit 1')
    .pluck();
  return {
    enter: (id, column, at) => void insert.run(id, at, JSON.stringify(column)),
    remove(id, at) {
      if ((latest.get(id) ?? null) === null) return false;
      insert.run(id, at, null);
      return true;
    },
    inForce: () => (inForce.all() as string[]).map((text) => JSON.parse(text)),
  };
}
