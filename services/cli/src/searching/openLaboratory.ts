import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { candidateColumns, type Imports, keptCandidates, openImports } from '@tiegel/search';
import {
  type ChargeSheets,
  type Melts,
  openChargeSheets,
  openMelts,
  openShortlists,
  openTokens,
  type Shortlists,
  type Tokens,
} from '@tiegel/search/laboratory';
import { type JoinedStore, joinStore, openStore, readStore } from '@tiegel/store';
import { placeOf } from '../input/readText.ts';
import { refuseAbsent } from './refuseAbsent.ts';

/** What a laboratory has written down, for as long as a command runs. */
export interface Laboratory {
  shortlists: Shortlists;
  /** its searches and what they kept */
  results: ReturnType<typeof keptCandidates>;
  chargeSheets: ChargeSheets;
  melts: Melts;
  imports: Imports;
  tokens: Tokens;
  close(): void;
}

/**
 * Opens the database of a laboratory: the file named, else that of the service, which may run
 * meanwhile. No search goes on in this process.
 * @throws ProblemError those of joinStore
 */
export function openLaboratory(database: string | undefined): Laboratory {
  return laboratoryIn(joinStore({ file: placeOfDatabase(database), columns: candidateColumns }));
}

function laboratoryIn(store: JoinedStore): Laboratory {
  const results = keptCandidates(store);
  const chargeSheets = openChargeSheets(store.chargeSheets);
  return {
    results,
    chargeSheets,
    melts: openMelts(store.melts, chargeSheets),
    imports: openImports(store),
    tokens: openTokens(store.tokens),
    shortlists: openShortlists(store.shortlists, results),
    close: () => store.close(),
  };
}

/**
 * The same for who only reads, or changes what is there already: a database that is named must be there, and need not be
 * one that this user may write. Where the service has none yet, it is as if that were empty, and none is made.
 * @throws ProblemError those of refuseAbsent and readStore
 */
export function openToRead(database: string | undefined): Laboratory {
  const file = placeOfDatabase(database);
  if (database !== undefined) refuseAbsent(database);
  else if (!existsSync(file)) {
    console.error(`The service has no database yet at ${file}; --database FILE names another.`);
    return laboratoryIn(openStore({ file: null, columns: candidateColumns }));
  }
  return laboratoryIn(readStore({ file, columns: candidateColumns }));
}

function placeOfDatabase(database: string | undefined): string {
  return database === undefined ? serviceDatabase(process.env) : placeOf(database);
}

function serviceDatabase({ DATA_DIR }: NodeJS.ProcessEnv): string {
  return resolve(join(DATA_DIR || 'data', 'tiegel.sqlite'));
}
