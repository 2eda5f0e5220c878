import type { FateCounts, ImportKind } from '@tiegel/contract';
import type { Connection } from '../sharing/connections.ts';

/** What is brought in: its data are a JSON value whose meaning is not the store's. */
interface NewImport {
  kind: ImportKind;
  /** id of a column; '' for every other kind */
  subject: string;
  name: string;
  data: unknown;
  rows: number;
  counts: FateCounts;
}

/** The same under its number. */
export interface StoredImport extends NewImport {
  number: number;
  /** UTC, ISO 8601 */
  at: string;
  withdrawnAt: string | null;
}

/** What is told of an import beside its data, which may be megabytes. */
export type ListedImport = Omit<StoredImport, 'data'>;

/** Data that a person brought in. What was stored stays; it may be withdrawn, and come back. */
export interface ImportTable {
  /**
   * Keeps it under the next number, whole or not at all; it is on the disk when this returns. The
   * same key, sent again because the answer was lost, gives what it kept the first time.
   */
  enter(one: NewImport, at: string, key?: string | null): { stored: StoredImport; created: boolean };
  /** Tells states of this table apart: another text exactly where another connection, of any process, has changed it. */
  state(): string;
  find(number: number): StoredImport | null;
  /** The newest first, without their data. */
  list(): ListedImport[];
  /** Those of a kind that were not withdrawn, the oldest first. */
  standing(kind: ImportKind): StoredImport[];
  /** @param at when it was withdrawn; null: it stands again */
  setWithdrawn(number: number, at: string | null): void;
  /** Withdraws all that stand of a subject of a kind, at once; how many there were. */
  withdrawAll(kind: ImportKind, subject: string, at: string): number;
}

const listed = 'number, kind, subject, name, at, rows, counts, withdrawn_at as withdrawnAt';
const fields = `${listed}, data`;

export function importTable(durable: Connection): ImportTable {
  const insert = durable.prepare(
    `insert into data_import (kind, subject, name, at, key, data, rows, counts)
     values (@kind, @subject, @name, @at, @key, @data, @rows, @counts)`,
  );
  const byKey = durable.prepare(`select ${fields} from data_import where key = ?`);
  const byNumber = durable.prepare(`select ${fields} from data_import where number = ?`);
  const all = durable.prepare(`select ${listed} from data_import order by number desc`);
  const standing = durable.prepare(
    `select ${fields} from data_import where kind = ? and withdrawn_at is null order by number`,
  );
  const withdraw = durable.prepare('update data_import set withdrawn_at = ? where number = ?');
  const withdrawSubject = durable.prepare(
    'update data_import set withdrawn_at = ? where kind = ? and subject = ? and withdrawn_at is null',
  );
  // Counts commits of other connections, and costs next to nothing.
  const commitsElsewhere = durable.prepare('pragma data_version').pluck();
  // Of a row only this ever changes.
  const marks = durable
    .prepare(
      "select group_concat(number || ' ' || coalesce(withdrawn_at, '') order by number) from data_import",
    )
    .pluck();
  let [counted, state] = [-1, ''];
  const enter = durable.transaction((one: NewImport, at: string, key: string | null) => {
    const before = key === null ? undefined : byKey.get(key);
    if (before !== undefined) return { stored: read(before), created: false };
    const written = { ...one, at, key, data: JSON.stringify(one.data), counts: JSON.stringify(one.counts) };
    const { lastInsertRowid } = insert.run(written);
    return { stored: read(byNumber.get(lastInsertRowid)), created: true };
  });
  return {
    enter: (one, at, key = null) => enter.immediate(one, at, key),
    state() {
      const commits = commitsElsewhere.get() as number;
      if (commits !== counted) [counted, state] = [commits, (marks.get() as string | null) ?? ''];
      return state;
    },
    find(number) {
      const row = byNumber.get(number);
      return row === undefined ? null : read(row);
    },
    list: () => all.all().map(readListed),
    standing: (kind) => standing.all(kind).map(read),
    setWithdrawn: (number, at) => void withdraw.run(at, number),
    withdrawAll: (kind, subject, at) => withdrawSubject.run(at, kind, subject).changes,
  };
}

function readListed(found: unknown): ListedImport {
  const row = found as Omit<ListedImport, 'counts'> & { counts: string };
  return { ...row, counts: JSON.parse(row.counts) };
}

function read(found: unknown): StoredImport {
  return { ...readListed(found), data: JSON.parse((found as { data: string }).data) };
}
