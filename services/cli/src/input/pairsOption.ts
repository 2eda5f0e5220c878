import { type OwnPair, readPairValues } from '@tiegel/elements';
import type { Command } from 'commander';
import { readText } from './readText.ts';

/** Adds --pairs. */
export function pairsOption(command: Command): Command {
  return command.option(
    '--pairs <file>',
    'pair enthalpies of your own in kJ/mol (CSV: a,b,mixingEnthalpy,source) in the place of the others',
  );
}

/**
 * The pair values of the file, none without one.
 * @throws ProblemError file/unreadable, import/..., element/..., request/wrong-value
 */
export function readPairs(file: string | undefined): OwnPair[] {
  if (file === undefined) return [];
  const importName = file === '-' ? 'on standard input' : file;
  return readPairValues(readText(file)).map((pair) => ({
    ...{ ...pair, import: null, importName, importedAt: null },
  }));
}
