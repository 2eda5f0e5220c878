import { existsSync } from 'node:fs';
import { problem } from '@tiegel/contract/terms';
import Database from 'better-sqlite3';
import { ownFile } from '../ownFile.ts';

/** How long a start waits for a command that is just making the database, ms. */
const patienceMs = 2_000;

/**
 * Makes this process the one that works on the searches of a database file, until the function returned is called
 * or the process ends in any way: SQLite's lock on a file beside it, which the system lets go when
 * its holder dies. Two processes on one ledger would each merge only what they collected.
 *
 * Throws store/in-use.
 */
export function ownership(file: string): () => void {
  ownFile(`${file}-owner`);
  const lock = new Database(`${file}-owner`, { timeout: patienceMs });
  try {
    lock.exec('begin exclusive');
  } catch (error) {
    lock.close();
    if (error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY')) {
      throw problem('store/in-use', { file });
    }
    throw error;
  }
  return () => lock.close();
}

/**
 * Whether some process works on the searches of a database file at this moment. What cannot be told,
 * for the file beside it may not be written by this user, counts as so.
 */
export function isOwned(file: string): boolean {
  const beside = `${file}-owner`;
  if (!existsSync(beside)) return false;
  let lock: Database.Database | null = null;
  try {
    lock = new Database(beside, { timeout: 0, fileMustExist: true });
    lock.exec('begin exclusive');
    return false;
  } catch {
    return true;
  } finally {
    lock?.close();
  }
}
