import type { Chunk, Counts } from '@tiegel/contract';
import type { Connection } from '../sharing/connections.ts';

/** Ordinal under which merged outcomes are kept, before all others. */
export const MERGED = -1;

/** What a taken outcome makes of its search as a whole. */
interface Progress {
  counts: Counts;
  /** seconds of work so far */
  activeSeconds: number;
}

/**
 * The chunks of each search and what finished ones found. A chunk counts once: its outcome and
 * its completion are one transaction, and a second outcome of it is refused.
 */
export interface Ledger {
  /** Up to `limit` unfinished chunks after the ordinal given (−1: from the first), in their order. */
  unfinished(search: number, after: number, limit: number): Chunk[];
  unfinishedCount(search: number): number;
  /** Takes the outcome of a chunk, given how the search then stands; false, and nothing changes, where it was taken before. */
  take(search: number, ordinal: number, bytes: Uint8Array, progress: Progress): boolean;
  /** Counts a failure of a chunk and returns how many there were. */
  countFailure(search: number, ordinal: number): number;
  /** Begins the counting of failures anew, for a search that is tried again. */
  forgetFailures(search: number): void;
  /** The kept outcome that follows the ordinal given (null: the first), null at the end. MERGED is the ordinal of what others were merged into. */
  outcomeAfter(search: number, ordinal: number | null): { ordinal: number; bytes: Uint8Array } | null;
  /** Puts one outcome in the place of all kept ones, which it was merged from. */
  merge(search: number, bytes: Uint8Array): void;
}

export function ledger(main: Connection): Ledger {
  const unfinished = main.prepare(
    `select ordinal, first_system as firstSystem, end_system as endSystem, first_point as firstPoint,
       end_point as endPoint, points
     from chunk where search = ? and finished = 0 and ordinal > ? order by ordinal limit ?`,
  );
  const count = main.prepare('select count(*) from chunk where search = ? and finished = 0').pluck();
  const finish = main.prepare(
    'update chunk set finished = 1 where search = ? and ordinal = ? and finished = 0',
  );
  const keep = main.prepare('insert into outcome (search, ordinal, bytes) values (?, ?, ?)');
  const advance = main.prepare(
    'update search set counts = ?, active_seconds = ?, sequence = sequence + 1 where number = ?',
  );
  const fail = main
    .prepare('update chunk set failures = failures + 1 where search = ? and ordinal = ? returning failures')
    .pluck();
  const forget = main.prepare('update chunk set failures = 0 where search = ? and failures > 0');
  const next = main.prepare(
    'select ordinal, bytes from outcome where search = ? and ordinal > ? order by ordinal limit 1',
  );
  const dropAll = main.prepare('delete from outcome where search = ?');

  const take = main.transaction((search: number, ordinal: number, bytes: Uint8Array, progress: Progress) => {
    if (finish.run(search, ordinal).changes === 0) return false;
    keep.run(search, ordinal, bytes);
    advance.run(JSON.stringify(progress.counts), progress.activeSeconds, search);
    return true;
  });
  const merge = main.transaction((search: number, bytes: Uint8Array) => {
    dropAll.run(search);
    keep.run(search, MERGED, bytes);
  });

  return {
    unfinished: (search, after, limit) => unfinished.all(search, after, limit) as Chunk[],
    unfinishedCount: (search) => count.get(search) as number,
    take: (search, ordinal, bytes, progress) => take.immediate(search, ordinal, bytes, progress),
    countFailure: (search, ordinal) => (fail.get(search, ordinal) as number | undefined) ?? 0,
    forgetFailures: (search) => void forget.run(search),
    outcomeAfter(search, ordinal) {
      const row = next.get(search, ordinal ?? MERGED - 1);
      return (row as { ordinal: number; bytes: Uint8Array } | undefined) ?? null;
    },
    merge: (search, bytes) => merge.immediate(search, bytes),
  };
}
