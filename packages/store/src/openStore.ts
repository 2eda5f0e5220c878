import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { problem } from '@tiegel/contract';
import { type CandidateTable, candidateTable } from './candidateTable.ts';
import { type ChargeSheetTable, chargeSheetTable } from './chargeSheets.ts';
import { type ConnectionOptions, openConnections } from './connections.ts';
import { type ImportTable, importTable } from './imports.ts';
import { type Ledger, ledger } from './ledger.ts';
import { type MeltTable, meltTable } from './melts.ts';
import { ownership } from './ownership.ts';
import { type SearchTable, searchTable } from './searches.ts';
import { type ShortlistTable, shortlistTable } from './shortlists.ts';
import { storeProblem, withStoreProblems } from './storeProblem.ts';

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

/** The one writer of a database. Every function may throw a problem store/...; nothing is half stored then. */
export interface Store {
  searches: SearchTable;
  ledger: Ledger;
  candidates: CandidateTable;
  imports: ImportTable;
  shortlists: ShortlistTable;
  chargeSheets: ChargeSheetTable;
  melts: MeltTable;
  close(): void;
}

/**
 * Opens the one writer of a database file.
 *
 * Throws store/in-use when another process has it open, store/foreign, store/newer,
 * store/unreachable and the other problems of a file that does not answer.
 */
export function openStore(options: StoreOptions): Store {
  const { file, remove } =
    options.file === null ? temporaryFile() : { file: resolve(options.file), remove() {} };
  makeFolder(file);
  const release = openedFrom(file, () => ownership(file));
  try {
    return openedFrom(file, () => opened(file, options, [release, remove]));
  } catch (error) {
    release();
    remove();
    throw error;
  }
}

function opened(file: string, options: StoreOptions, afterwards: (() => void)[]): Store {
  const connections = openConnections(file, options);
  const { main, durable } = connections;
  return {
    searches: withStoreProblems(searchTable(main), file),
    ledger: withStoreProblems(ledger(main), file),
    candidates: withStoreProblems(candidateTable(connections, options.columns), file),
    imports: withStoreProblems(importTable(durable), file),
    shortlists: withStoreProblems(shortlistTable(durable), file),
    chargeSheets: withStoreProblems(chargeSheetTable(durable), file),
    melts: withStoreProblems(meltTable(durable), file),
    close() {
      connections.close();
      for (const act of afterwards) act();
    },
  };
}

function openedFrom<Value>(file: string, open: () => Value): Value {
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

function makeFolder(file: string): void {
  try {
    mkdirSync(dirname(file), { recursive: true });
  } catch (error) {
    throw problem('store/unreachable', { file, why: (error as Error).message });
  }
}
