import { closeSync, openSync } from 'node:fs';

/**
 * Makes an empty file that its user alone may read and write, where none is there: SQLite takes it as
 * a new database, and gives the files beside it (-wal, -shm, -journal) the same rights. One that is
 * there keeps its own; where none can be made, SQLite says why.
 */
export function ownFile(file: string): void {
  try {
    closeSync(openSync(file, 'wx', 0o600));
  } catch {}
}
