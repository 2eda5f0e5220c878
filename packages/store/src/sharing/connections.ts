import Database from 'better-sqlite3';
import { migrate, refuseForeign } from '../migrate.ts';
import { ownFile } from '../ownFile.ts';

export type Connection = Database.Database;

/**
 * The connections of a process: of the one that works on the searches, or of one that joined it.
 *
 * - `main`: searches, chunks, candidates. Not synchronised at each commit: a power cut may take
 *   the last ones, and their chunks run again; the file stays whole.
 * - `durable`: what a person entered. A commit is on the disk when it returns.
 * - `openReader`: a read-only connection of its own for one long read, to be closed by who opened
 *   it: a connection that is walking through rows refuses to write.
 */
export interface Connections {
  main: Connection;
  durable: Connection;
  openReader(): Connection;
  /** From now on a lock of another process is told at once, not waited for: whenFree waits instead. */
  tellLocks(): void;
  /** for how long, ms */
  patienceMs: number;
  close(): void;
}

export interface ConnectionOptions {
  /** a quota on the file, bytes; SQLite answers beyond it as on a full disk */
  maximumBytes?: number;
  /** how long to wait for another program's lock, ms */
  busyTimeoutMs?: number;
  /** the database that this file is a copy of, for reading: problems name it, and what people write down is refused */
  readAs?: string;
}

/** A server answers nobody while it waits. */
const usualPatienceMs = 5_000;

/** Cache of a connection, KiB: small, for all connections together share a process of 300 MB. */
const cacheKibibytes = { main: 16_000, durable: 2_000, reader: 8_000 };

/** Opens a database file, made when it is not there, in its newest form. Throws as refuseForeign and migrate do. */
export function openConnections(file: string, options: ConnectionOptions = {}): Connections {
  const timeout = options.busyTimeoutMs ?? usualPatienceMs;
  const open: Connection[] = [];
  const close = () => {
    for (const one of open.toReversed()) one.close();
  };
  try {
    ownFile(file);
    const main = new Database(file, { timeout });
    open.push(main);
    refuseForeign(main);
    main.pragma('journal_mode = WAL');
    prepare(main, 'NORMAL', cacheKibibytes.main);
    migrate(main);
    const durable = new Database(file, { timeout });
    open.push(durable);
    prepare(durable, 'FULL', cacheKibibytes.durable);
    for (const one of open) limit(one, options.maximumBytes);
    const tellLocks = () => {
      for (const one of open) one.pragma('busy_timeout = 0');
    };
    return {
      ...{ main, durable, tellLocks, close, patienceMs: timeout },
      openReader: () => reader(file, timeout),
    };
  } catch (error) {
    close();
    throw error;
  }
}

function reader(file: string, timeout: number): Connection {
  const connection = new Database(file, { timeout, readonly: true, fileMustExist: true });
  prepare(connection, 'NORMAL', cacheKibibytes.reader);
  return connection;
}

function prepare(connection: Connection, synchronous: 'NORMAL' | 'FULL', kibibytes: number): void {
  // Stated even where it is the default: after WAL is switched on it reads FULL at first, later NORMAL.
  connection.pragma(`synchronous = ${synchronous}`);
  connection.pragma('foreign_keys = ON');
  connection.pragma('trusted_schema = OFF');
  connection.pragma(`cache_size = ${-kibibytes}`);
}

function limit(connection: Connection, maximumBytes: number | undefined): void {
  if (maximumBytes === undefined) return;
  const pageBytes = connection.pragma('page_size', { simple: true }) as number;
  connection.pragma(`max_page_count = ${Math.floor(maximumBytes / pageBytes)}`);
}
