import type { ProblemKind } from '../problemKind.ts';
import { fileRead } from './words.ts';

/** Files and commands of the terminal, and exports. */
export const fileProblems = {
  'command/usage': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string }) => `The command cannot be read: ${what}`,
    remedy: 'See "npm run -s tiegel -- help" and "npm run -s tiegel -- help COMMAND".',
  },
  'command/nothing-to-screen': {
    status: 400,
    exit: 1,
    text: () => 'No alloy was given.',
    remedy: 'Write alloys such as AlCoCrFeNi behind the command, or one a line in a file for --file.',
  },
  'file/unreadable': {
    status: 400,
    exit: 1,
    text: ({ file, why }: { file: string; why: string }) => `${fileRead(file)} cannot be read: ${why}.`,
    remedy: 'Name a file that is there and may be read, or - for standard input.',
  },
  'file/encoding': {
    status: 400,
    exit: 1,
    text: ({ file }: { file: string }) =>
      `${fileRead(file)} is no text in UTF-8: its letters would become others.`,
    remedy: 'Save it in UTF-8 (a spreadsheet as "CSV UTF-8"), then try again.',
  },
  'file/empty': {
    status: 400,
    exit: 1,
    text: ({ file }: { file: string }) => `The file ${file} is empty.`,
    remedy: 'Name a file with something in it.',
  },
  'file/exists': {
    status: 400,
    exit: 1,
    text: ({ file }: { file: string }) => `The file ${file} is there already.`,
    remedy: 'Name another file, or say --overwrite to lose what is in it.',
  },
  'file/not-replaceable': {
    status: 400,
    exit: 1,
    text: ({ file, what }: { file: string; what: string }) =>
      `${file} is ${what}, which a file must not take the place of.`,
    remedy: 'Name another file, or say - for standard output and let the shell lead that on.',
  },
  'output/refused': {
    status: 500,
    exit: 2,
    text: ({ why }: { why: string }) => `Standard output does not take what is written: ${why}.`,
    remedy: 'Make room where it leads to, or lead it elsewhere.',
  },
  'file/unwritable': {
    status: 400,
    exit: 1,
    text: ({ file, why }: { file: string; why: string }) => `The file ${file} cannot be written: ${why}.`,
    remedy: 'Name a file in a folder that is there and may be written in.',
  },
  'file/too-large': {
    status: 400,
    exit: 1,
    text: ({ file, size, limit }: { file: string; size: number; limit: number }) =>
      `${fileRead(file)} has ${size} characters; more than ${limit} are not read.`,
    remedy: 'Divide it.',
  },
  'file/malformed-json': {
    status: 400,
    exit: 1,
    text: ({ file, found }: { file: string; found: string }) => `${fileRead(file)} is not JSON: ${found}.`,
    remedy:
      'Write one JSON value, with double quotes around names and texts and no comma at the end of a list.',
  },
  'command/search-ended': {
    status: 500,
    exit: 2,
    text: ({ state, reason }: { state: string; reason: string }) => `The search is ${state}: ${reason}.`,
    remedy:
      '"searches resume" goes on where it stood: of a database with --database FILE, else of a service. Without either, start it anew.',
  },
  'export/too-many-rows': {
    status: 400,
    exit: 1,
    text: ({ rows, most }: { rows: number; most: number }) =>
      `A spreadsheet holds at most ${most} rows, and these are ${rows}.`,
    remedy: 'Filter the candidates, or take them as CSV or Parquet, which have no limit.',
  },
  'export/unreadable': {
    status: 400,
    exit: 1,
    text: ({ file, what }: { file: string; what: string }) =>
      `${file} cannot be read as an export of candidates: ${what}.`,
    remedy: 'Name a file that was exported as CSV or NDJSON and not changed since.',
  },
  'export/other-versions': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string }) =>
      `The rows are not the same, and neither is ${what} that the export was made with.`,
    remedy: 'Use the release and the price list (--prices) of the export, or take the new rows.',
  },
  'export/not-reproduced': {
    status: 500,
    exit: 2,
    text: () => 'The rows are not the same although data and engine are: this must not happen.',
    remedy: 'Check that nobody changed the file; if nobody did, report the export as a fault of the program.',
  },
} satisfies Record<string, ProblemKind>;
