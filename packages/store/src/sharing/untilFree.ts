import { setTimeout } from 'node:timers/promises';
import Database from 'better-sqlite3';
import type { Connection } from './connections.ts';

/** How often the lock is looked at, ms: between two processes that write one thing after another, who looks rarely gets no turn. */
const lookEveryMs = 5;

export interface Patience {
  /** however long where it is left out */
  atMostMs?: number;
  signal?: AbortSignal;
}

/**
 * Waits by timers while another process has the lock for writing, so that everybody is answered
 * meanwhile; true as soon as a write would begin at once. False when patience is over, or the
 * signal aborted. What is written right after it may still find another first, and waits as whenFree does.
 */
export async function untilFree(
  connection: Connection,
  { atMostMs = Number.POSITIVE_INFINITY, signal }: Patience = {},
): Promise<boolean> {
  const deadline = performance.now() + atMostMs;
  while (!isFree(connection)) {
    if (performance.now() > deadline || signal?.aborted) return false;
    await setTimeout(lookEveryMs);
  }
  return true;
}

/** Whether a write would begin at once. What else may be wrong with the database is for the write to tell. */
export function isFree(connection: Connection): boolean {
  if (!connection.open || connection.inTransaction) return true;
  try {
    connection.exec('begin immediate');
    connection.exec('rollback');
    return true;
  } catch (error) {
    return !(error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY'));
  }
}
