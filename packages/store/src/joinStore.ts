import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { ProblemError } from '@tiegel/contract/terms';
import Database from 'better-sqlite3';
import { missingColumns } from './candidates/candidateColumns.ts';
import type { CandidateTable } from './candidates/candidateTable.ts';
import { formOf, refuseForeign } from './migrate.ts';
import { makeFolder, openedFrom, openStore, type Store, tablesOf } from './openStore.ts';
import type { ConnectionOptions } from './sharing/connections.ts';
import type { SearchTable } from './tables/searches.ts';

/** A command can wait longer than a server. */
const commandPatienceMs = 30_000;

export interface JoinOptions extends ConnectionOptions {
  file: string;
  /** as for openStore */
  columns: readonly string[];
}

/** What may be done beside the process that works on the searches: they and their candidates are only read. */
export interface JoinedStore extends Omit<Store, 'ledger' | 'searches' | 'candidates'> {
  searches: Omit<SearchTable, 'create' | 'change' | 'conclude'>;
  candidates: Omit<CandidateTable, 'insert' | 'clear'>;
}

/**
 * Opens a database for as long as a command takes, whether or not another process works on its
 * searches: what people write down is kept by transactions that SQLite keeps apart, and whoever
 * holds some of it in memory looks whether it changed (ImportTable.state). A file that is not there,
 * or has an older form, is made first, for which nobody else may work on it.
 *
 * Throws store/in-use where it must be made and another process works on it, and otherwise as openStore does.
 */
export function joinStore(options: JoinOptions): JoinedStore {
  const file = resolve(options.file);
  makeFolder(file);
  if (openedFrom(file, () => mustBeMade(file, options))) make(file, options);
  const patience = { busyTimeoutMs: commandPatienceMs, ...options };
  return openedFrom(file, () => tablesOf(file, patience, []));
}

function make(file: string, options: JoinOptions): void {
  try {
    openStore({ ...options, file }).close();
  } catch (error) {
    const inUse = error instanceof ProblemError && error.faults[0]?.code === 'store/in-use';
    // Somebody else may just have made it.
    if (!inUse || openedFrom(file, () => mustBeMade(file, options))) throw error;
  }
}

function mustBeMade(file: string, { columns, busyTimeoutMs: timeout = 5_000 }: JoinOptions): boolean {
  if (!existsSync(file)) return true;
  const database = new Database(file, { timeout });
  try {
    refuseForeign(database);
    return formOf(database) === 'older' || missingColumns(database, columns).length > 0;
  } finally {
    database.close();
  }
}
