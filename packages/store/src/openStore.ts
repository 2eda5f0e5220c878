import { existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { problem } from '@tiegel/contract/terms';
import { type CandidateTable, candidateTable } from './candidates/candidateTable.ts';
import { type ConnectionOptions, openConnections } from './sharing/connections.ts';
import { isOwned, ownership } from './sharing/ownership.ts';
import { isFree, type Patience, untilFree } from './sharing/untilFree.ts';
import { storeProblem, withStoreProblems } from './storeProblem.ts';
import { type ChargeSheetTable, chargeSheetTable } from './tables/chargeSheets.ts';
import { type ImportTable, importTable } from './tables/imports.ts';
import { type Ledger, ledger } from './tables/ledger.ts';
import { type MeltTable, meltTable } from './tables/melts.ts';
import { type SearchTable, searchTable } from './tables/searches.ts';
import { type ShortlistTable, shortlistTable } from './tables/shortlists.ts';
import { type TokenTable, tokenTable } from './tables/tokens.ts';

/**
 * - `file`: the database file, made when it is not there, its folder too; null for a temporary one
 *   that goes at close.
 * - `columns`: ids of the quantities that candidates have, as columns of their own; a new one is
 *   added at opening.
 */
export interface StoreOptions extends ConnectionOptions {
  file: string | null;
  columns: readonly string[];
}

/** A database that is open. Every function may throw a problem store/...; nothing is half stored then. */
export interface Store {
  searches: SearchTable;
  ledger: Ledger;
  candidates: CandidateTable;
  imports: ImportTable;
  shortlists: ShortlistTable;
  chargeSheets: ChargeSheetTable;
  melts: MeltTable;
  tokens: TokenTable;
  /** Whether some process, this one too, works on the searches at this moment. */
  isWorkedOn(): boolean;
  /** Whether a write would begin at once, for no other process has the lock. */
  isFree(): boolean;
  /** Waits until it would, without keeping anybody from being answered; false where patience ended first. */
  untilFree(patience?: Patience): Promise<boolean>;
  close(): void;
}

/**
 * Opens a database file for the one process that works on its searches; others may join it
 * meanwhile, for what people write down (joinStore).
 *
 * Throws store/in-use when another process works on it, store/foreign, store/newer,
 * store/unreachable and the other problems of a file that does not answer.
 */
export function openStore(options: StoreOptions): Store {
  const { file, remove } =
    options.file === null ? temporaryFile() : { file: resolve(options.file), remove() {} };
  makeFolder(file);
  const release = openedFrom(file, () => ownership(file));
  try {
    return openedFrom(file, () => tablesOf(file, options, [release, remove]));
  } catch (error) {
    release();
    remove();
    throw error;
  }
}

/** The tables of a database over connections of its own; at close what is given follows. */
export function tablesOf(
  file: string,
  options: Omit<StoreOptions, 'file'>,
  afterwards: readonly (() => void)[],
): Store {
  const connections = openConnections(file, options);
  const { main, durable, patienceMs } = connections;
  const told = options.readAs ?? file;
  const guarded = <Part extends object>(part: Part) => withStoreProblems(part, told, patienceMs);
  const tables = {
    searches: guarded(searchTable(main)),
    ledger: guarded(ledger(main)),
    candidates: guarded(candidateTable(connections, options.columns)),
    imports: guarded(importTable(durable)),
    shortlists: guarded(shortlistTable(durable)),
    chargeSheets: guarded(chargeSheetTable(durable)),
    melts: guarded(meltTable(durable)),
    tokens: guarded(tokenTable(durable)),
  };
  if (options.readAs !== undefined) durable.pragma('query_only = ON');
  connections.tellLocks();
  return {
    ...tables,
    isWorkedOn: () => isOwned(file),
    isFree: () => isFree(main),
    untilFree: (patience) => untilFree(main, patience),
    close() {
      connections.close();
      for (const act of afterwards) act();
    },
  };
}

/** What an opening gives; what SQLite says against it as a problem of the table. */
export function openedFrom<Value>(file: string, open: () => Value): Value {
  try {
    return open();
  } catch (error) {
    throw storeProblem(error, file);
  }
}

function temporaryFile(): { file: string; remove: () => void } {
  const folder = mkdtempSync(join(tmpdir(), 'tiegel-'));
  return {
    file: join(folder, 'searches.db'),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Makes the folder of a file, for this user alone, where it is not there. Throws store/unreachable. */
export function makeFolder(file: string): void {
  try {
    makeStepByStep(dirname(file));
  } catch (error) {
    throw problem('store/unreachable', { file, why: (error as Error).message });
  }
}

/** Told to make every folder above as well, Node tries for ever where there can be none, as in /proc. */
function makeStepByStep(folder: string): void {
  if (existsSync(folder)) return;
  makeStepByStep(dirname(folder));
  try {
    mkdirSync(folder, { mode: 0o700 });
  } catch (error) {
    // Somebody else may just have made it.
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
  }
}
