import { demoPrices, type OwnColumn, type OwnPair, type PriceList } from '@tiegel/elements';
import type { ObservedAlloy, OwnNeighbourAlloy } from '@tiegel/insight';
import type { Command } from 'commander';
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
  prices: priceFile,
  pairs: pairFile,
  column: columnFiles,
}: {
  database?: string;
  prices?: string;
  pairs?: string;
  column?: readonly string[];
}): Promise<DataInForce> {
  const list = readPrices(priceFile);
  const values = readPairs(pairFile);
  const columns = readColumns(columnFiles);
  if (database === undefined)
    return { prices: list, pairs: values, columns, alloys: [], melts: [], broughtIn: [] };
  const [{ openToRead }, { ownNeighbours }] = await Promise.all([
    import('../searching/openLaboratory.ts'),
    import('@tiegel/search/laboratory'),
  ]);
  const { melts, imports, close } = openToRead(database);
  try {
    return {
      prices: priceFile === undefined ? (imports.prices() ?? demoPrices) : list,
      // Of the same pair the later value holds.
      pairs: [...imports.pairs(), ...values],
      columns: [...imports.columns().filter(({ id }) => columns.every((one) => one.id !== id)), ...columns],
      alloys: ownNeighbours(melts, imports),
      melts: melts.observed(),
      broughtIn: imports.observed(),
    };
  } finally {
    close();
  }
}
