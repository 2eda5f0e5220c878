import { newId } from '../newId.ts';
import type { Connection } from '../sharing/connections.ts';

/** A melt as it stands. `entry` is a JSON value whose meaning is not the store's. */
export interface StoredMelt {
  id: string;
  /** from 1; grows with every change */
  version: number;
  createdAt: string;
  changedAt: string;
  /** null: not deleted */
  deletedAt: string | null;
  entry: unknown;
}

/** How a melt stood from `at` on. */
export interface MeltVersion {
  version: number;
  at: string;
  /** who wrote it; null: nobody was asked */
  by: string | null;
  entry: unknown;
}

/** A file that belongs to a melt. Its content lies outside, under its id. */
export interface StoredAttachment {
  id: string;
  name: string;
  type: string;
  /** bytes */
  size: number;
  addedAt: string;
}

/** The melts that somebody recorded, with every earlier version. Each change is on the disk when it returns. */
export interface MeltTable {
  /** The same key, sent again because the answer was lost, gives the melt that it made the first time. */
  create(entry: unknown, at: string, key?: string | null, by?: string | null): StoredMelt;
  find(id: string): StoredMelt | null;
  /** Those that are not deleted, the newest first. */
  list(): StoredMelt[];
  /** null where the melt is at another version by now: nothing is changed then. */
  change(id: string, version: number, entry: unknown, at: string, by?: string | null): StoredMelt | null;
  /** Hides a melt, or with null brings it back. Nothing is lost. */
  setDeleted(id: string, at: string | null): void;
  /** The newest first. */
  history(id: string): MeltVersion[];
  /** For a file that will be attached: its content is put there before the melt knows of it. */
  newAttachmentId(): string;
  /** false where the melt has so many already: nothing is attached then, whoever else attaches at the same time. */
  attach(id: string, attachment: Omit<StoredAttachment, 'addedAt'>, at: string, most: number): boolean;
  /** Those that were not taken away, in the order of adding. */
  attachments(id: string): StoredAttachment[];
  /** Whether it is attached, or was taken away. */
  hadAttachment(id: string, attachment: string): boolean;
  /** Takes a file of a melt away. */
  remove(id: string, attachment: string, at: string): void;
  /** Brings it back; false where the melt has so many others by now: it stays away then. */
  restore(id: string, attachment: string, most: number): boolean;
}

const columns =
  'id, version, created_at as createdAt, changed_at as changedAt, deleted_at as deletedAt, entry';

/** Counted in the statement that adds one: two that are sent at once cannot both be the last. */
const fewerThanMost =
  '(select count(*) from melt_attachment where melt = @melt and removed_at is null) < @most';

export function meltTable(durable: Connection): MeltTable {
  const insert = durable.prepare(
    'insert into melt (id, key, version, created_at, changed_at, entry) values (?, ?, 1, ?, ?, ?)',
  );
  const keep = durable.prepare(
    'insert into melt_version (melt, version, at, written_by, entry) values (?, ?, ?, ?, ?)',
  );
  const byId = durable.prepare(`select ${columns} from melt where id = ?`);
  const byKey = durable.prepare(`select ${columns} from melt where key = ?`);
  const all = durable.prepare(`select ${columns} from melt where deleted_at is null order by number desc`);
  const update = durable.prepare(
    'update melt set version = version + 1, changed_at = ?, entry = ? where id = ? and version = ?',
  );
  const hide = durable.prepare('update melt set deleted_at = ? where id = ?');
  const versions = durable.prepare(
    'select version, at, written_by as "by", entry from melt_version where melt = ? order by version desc',
  );
  const add = durable.prepare(
    `insert into melt_attachment (id, melt, name, type, size, added_at)
     select @id, @melt, @name, @type, @size, @at where ${fewerThanMost}`,
  );
  const attached = durable.prepare(
    `select id, name, type, size, added_at as addedAt from melt_attachment
     where melt = ? and removed_at is null order by number`,
  );
  const remove = durable.prepare('update melt_attachment set removed_at = ? where melt = ? and id = ?');
  const restore = durable.prepare(
    `update melt_attachment set removed_at = null
     where melt = @melt and id = @id and removed_at is not null and ${fewerThanMost}`,
  );
  const isAway = durable.prepare(
    'select 1 from melt_attachment where melt = ? and id = ? and removed_at is not null',
  );
  const had = durable.prepare('select 1 from melt_attachment where melt = ? and id = ?');
  const find = (id: string) => read(byId.get(id));

  const create = durable.transaction((entry: unknown, at: string, key: string | null, by: string | null) => {
    const before = key === null ? null : read(byKey.get(key));
    if (before !== null) return before;
    const id = newId(durable);
    const text = JSON.stringify(entry);
    insert.run(id, key, at, at, text);
    keep.run(id, 1, at, by, text);
    return find(id)!;
  });
  const change = durable.transaction(
    (id: string, version: number, entry: unknown, at: string, by: string | null) => {
      const text = JSON.stringify(entry);
      if (update.run(at, text, id, version).changes === 0) return null;
      keep.run(id, version + 1, at, by, text);
      return find(id);
    },
  );
  return {
    create: (entry, at, key = null, by = null) => create.immediate(entry, at, key, by),
    find,
    list: () => all.all().map((row) => read(row)!),
    change: (id, version, entry, at, by = null) => change.immediate(id, version, entry, at, by),
    setDeleted: (id, at) => void hide.run(at, id),
    history: (id) => (versions.all(id) as (MeltVersion & { entry: string })[]).map(parsed),
    newAttachmentId: () => newId(durable),
    attach: (melt, { id, name, type, size }, at, most) =>
      add.run({ id, melt, name, type, size, at, most }).changes > 0,
    attachments: (id) => attached.all(id) as StoredAttachment[],
    hadAttachment: (id, attachment) => had.get(id, attachment) !== undefined,
    remove: (id, attachment, at) => void remove.run(at, id, attachment),
    restore(melt, id, most) {
      restore.run({ melt, id, most });
      return isAway.get(melt, id) === undefined;
    },
  };
}

const parsed = <Row extends { entry: string }>(row: Row) => ({
  ...row,
  entry: JSON.parse(row.entry) as unknown,
});

function read(row: unknown): StoredMelt | null {
  return row === undefined ? null : parsed(row as StoredMelt & { entry: string });
}
