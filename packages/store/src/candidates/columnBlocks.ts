import type { Connection } from '../sharing/connections.ts';

/** An array of numbers that a column is made of. */
export type Numbers = Float64Array | Uint32Array | Uint8Array;

/** Columns of a search's candidates as they lie in the database, in blocks: see migration 8. */
export interface ColumnBlocks {
  write(search: number, name: string, first: number, numbers: Numbers): void;
  /** Copies a column, from a place on, into an array as far as both reach; false where there is none. */
  read(search: number, name: string, into: Numbers, from?: number): boolean;
  /** Whether its first block is there, which is the last that is written. */
  has(search: number, name: string): boolean;
  remove(search: number): void;
}

export function columnBlocks(connection: Connection): ColumnBlocks {
  const write = connection.prepare(
    'insert or replace into candidate_block (search, name, first, bytes) values (?, ?, ?, ?)',
  );
  // The block in which the stretch begins, and those that begin in it.
  const read = connection
    .prepare(
      `select first, bytes from candidate_block where search = ? and name = ? and first < ?
         and first >= (select coalesce(max(first), 0) from candidate_block
                       where search = ? and name = ? and first <= ?)
       order by first`,
    )
    .raw();
  const any = connection.prepare('select 1 from candidate_block where search = ? and name = ? and first = 0');
  const remove = connection.prepare('delete from candidate_block where search = ?');
  return {
    write(search, name, first, { buffer, byteOffset, byteLength }) {
      write.run(search, name, first, Buffer.from(buffer, byteOffset, byteLength));
    },
    read(search, name, into, from = 0) {
      const size = into.BYTES_PER_ELEMENT;
      const target = new Uint8Array(into.buffer, into.byteOffset, into.byteLength);
      let found = false;
      for (const row of read.iterate(search, name, from + into.length, search, name, from)) {
        const [first, bytes] = row as [number, Uint8Array];
        const skipped = Math.max(0, from - first) * size;
        const at = Math.max(0, first - from) * size;
        target.set(bytes.subarray(skipped, skipped + target.length - at), at);
        found = true;
      }
      return found;
    },
    has: (search, name) => any.get(search, name) !== undefined,
    remove: (search) => void remove.run(search),
  };
}
