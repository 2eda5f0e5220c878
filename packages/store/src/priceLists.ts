import type { Connection } from './connections.ts';

/** The price lists that a person entered, as JSON values whose meaning is not the store's. */
export interface PriceLists {
  /** Keeps a list as the one in force; it is on the disk when this returns. */
  enter(list: unknown, at: string): void;
  /** The list in force, null where none was entered. */
  inForce(): unknown;
}

export function priceLists(durable: Connection): PriceLists {
  const insert = durable.prepare('insert into price_list (entered_at, list) values (?, ?)');
  const newest = durable.prepare('select list from price_list order by number desc limit 1').pluck();
  return {
    enter: (list, at) => void insert.run(at, JSON.stringify(list)),
    inForce() {
      const text = newest.get() as string | undefined;
      return text === undefined ? null : JSON.parse(text);
    },
  };
}
