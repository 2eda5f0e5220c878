import { type OwnColumn, readOwnColumn } from '@tiegel/elements';
import type { Command } from 'commander';
import { readText } from './readText.ts';

/** Adds --column, which may be given several times. */
export function columnOption(command: Command): Command {
  return command.option(
    '--column <file>',
    'an element column of your own (CSV: symbol,value,name,unit,mixing); may be given several times',
    (file: string, before: string[] = []) => [...before, file],
  );
}

/**
 * The columns of the files.
 * @throws ProblemError file/unreadable, column/*
 */
export function readColumns(files: readonly string[] = []): OwnColumn[] {
  return files.map((file) => readOwnColumn(readText(file)));
}
