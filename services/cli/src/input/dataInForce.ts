import { demoPrices, type OwnColumn, type OwnPair, type PriceList } from '@tiegel/elements';
import type { ObservedAlloy, OwnNeighbourAlloy } from '@tiegel/insight';
import type { Command } from 'commander';
import type { Laboratory } from '../searching/openLaboratory.ts';
import { readColumns } from './columnOption.ts';
import { readPairs } from './pairsOption.ts';
import { readPrices } from './readPrices.ts';

/** Data that a command computes from, beside those that come with the program. */
export interface DataInForce {
  prices: PriceList;
  pairs: readonly OwnPair[];
  columns: readonly OwnColumn[];
  /** of one's own, melted or brought in */
  alloys: readonly OwnNeighbourAlloy[];
  /** melts whose phases were observed */
  melts: ObservedAlloy[];
  /** alloys that were brought in with their phases */
  broughtIn: ObservedAlloy[];
}

/** Files of a command that go before what is in force, as commander names them. */
interface DataFiles {
  prices?: string;
  pairs?: string;
  column?: readonly string[];
}

/** Adds --database to a command that reads what is in force there. */
export function inForceOption(command: Command, what: string): Command {
  return command.option('--database <file>', `with ${what} of this database`);
}

/**
 * What is in force in the database that was named, files of the command before it; without a
 * database the files alone.
 * @throws ProblemError those of openToRead, readPrices, readPairs and readColumns
 */
export async function dataInForce({
  database,
  ...files
}: DataFiles & { database?: string }): Promise<DataInForce> {
  if (database === undefined) return { ...dataOf(files), alloys: [], melts: [], broughtIn: [] };
  const { openToRead } = await import('../searching/openLaboratory.ts');
  const laboratory = openToRead(database);
  try {
    return await dataInForceOf(laboratory, files);
  } finally {
    laboratory.close();
  }
}

/**
 * The same for a laboratory that is open.
 * @throws ProblemError those of readPrices, readPairs and readColumns
 */
export async function dataInForceOf(
  { melts, imports }: Pick<Laboratory, 'melts' | 'imports'>,
  files: DataFiles,
): Promise<DataInForce> {
  const { prices, pairs, columns } = dataOf(files);
  const { ownNeighbours } = await import('@tiegel/search/laboratory');
  return {
    prices: files.prices === undefined ? (imports.prices() ?? demoPrices) : prices,
    // Of the same pair the later value holds.
    pairs: [...imports.pairs(), ...pairs],
    columns: [...imports.columns().filter(({ id }) => columns.every((one) => one.id !== id)), ...columns],
    alloys: ownNeighbours(melts, imports),
    melts: melts.observed(),
    broughtIn: imports.observed(),
  };
}

function dataOf({ prices, pairs, column }: DataFiles): Pick<DataInForce, 'prices' | 'pairs' | 'columns'> {
  return { prices: readPrices(prices), pairs: readPairs(pairs), columns: readColumns(column) };
}
