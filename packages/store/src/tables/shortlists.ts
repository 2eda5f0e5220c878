import type { ShortlistChange, ShortlistStart, TakenChange } from '@tiegel/contract';
import { newId } from '../newId.ts';
import type { Connection } from '../sharing/connections.ts';

/** Shortlists as the changes that were made to them. Each is on the disk when it returns. */
export interface ShortlistTable {
  /** Begins a list with its first changes, in one transaction. */
  create(at: string, changes?: readonly ShortlistChange[]): ShortlistStart;
  find(id: string): ShortlistStart | null;
  /** The newest first. */
  list(): ShortlistStart[];
  /** In the order of their sequence. */
  changes(id: string): TakenChange[];
  /** Takes changes in one transaction, each under the next number; one whose key was taken before counts once. */
  take(id: string, changes: readonly ShortlistChange[], at: string): void;
}

interface Row {
  sequence: number;
  at: string;
  change: string;
}

export function shortlistTable(durable: Connection): ShortlistTable {
  const insert = durable.prepare('insert into shortlist (id, created_at) values (?, ?)');
  const byId = durable.prepare('select id, created_at as createdAt from shortlist where id = ?');
  const all = durable.prepare('select id, created_at as createdAt from shortlist order by number desc');
  const changes = durable.prepare(
    'select sequence, at, change from shortlist_change where shortlist = ? order by sequence',
  );
  const append = durable.prepare(
    `insert into shortlist_change (shortlist, sequence, key, at, change)
     select ?, coalesce(max(sequence), 0) + 1, ?, ?, ? from shortlist_change where shortlist = ?
     on conflict (shortlist, key) do nothing`,
  );
  const take = durable.transaction((id: string, taken: readonly ShortlistChange[], at: string) => {
    for (const change of taken) append.run(id, change.key, at, JSON.stringify(change), id);
  });
  const create = durable.transaction((at: string, changes: readonly ShortlistChange[]): ShortlistStart => {
    const id = newId(durable);
    insert.run(id, at);
    take(id, changes, at);
    return { id, createdAt: at };
  });
  return {
    create: (at, changes = []) => create.immediate(at, changes),
    find: (id) => (byId.get(id) as ShortlistStart | undefined) ?? null,
    list: () => all.all() as ShortlistStart[],
    changes: (id) =>
      (changes.all(id) as Row[]).map(({ sequence, at, change }) => ({
        ...(JSON.parse(change) as ShortlistChange),
        sequence,
        at,
      })),
    take: (id, taken, at) => take.immediate(id, taken, at),
  };
}
