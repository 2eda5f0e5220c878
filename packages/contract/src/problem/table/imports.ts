import type { ProblemKind } from '../problemKind.ts';

/** Files that were brought in. */
export const importProblems = {
  'import/unknown': {
    status: 404,
    exit: 1,
    text: ({ number }: { number: string | number }) => `There is no import ${number}.`,
    remedy: 'The page Data, "data imports" and GET /api/v1/imports list them.',
  },
  'import/refused': {
    status: 422,
    exit: 1,
    text: ({ refused, rows }: { refused: number; rows: number }) =>
      refused === 0
        ? 'The file cannot be stored as it is, so nothing was.'
        : `${refused} of ${rows} rows cannot be stored, so nothing was.`,
    remedy: 'Mend what is said of each row, then send the whole file again.',
  },
  'import/too-large': {
    status: 413,
    exit: 1,
    text: ({ size, limit, of }: { size: number; limit: number; of: string }) =>
      `The file has ${size} ${of}; at most ${limit} are read.`,
    remedy: 'Bring it in in several files.',
  },
  'import/unreadable': {
    status: 400,
    exit: 1,
    text: ({ line, what }: { line: number; what: string }) =>
      `The file cannot be read at line ${line}: ${what}.`,
    remedy:
      'Separate fields with commas, or with semicolons or tabs throughout, as many in each row as in the header; put a field that holds such a sign or a quote in double quotes and double the quotes in it.',
  },
  'import/empty': {
    status: 400,
    exit: 1,
    text: () => 'The file has no rows.',
    remedy: ({ header }: { header: string }) =>
      `Write the header ${header} and below it a line for each row.`,
  },
  'import/header': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string; header: string }) => `The header of the file is wrong: ${what}.`,
    remedy: ({ header }: { what: string; header: string }) =>
      `Begin with the header ${header}, separated by commas, semicolons or tabs.`,
  },
  'import/repeated': {
    status: 400,
    exit: 1,
    text: ({ what, line, first }: { what: string; line: number; first: number }) =>
      `${what} stands on line ${first} and again on line ${line}.`,
    remedy: 'Keep one of the rows.',
  },
} satisfies Record<string, ProblemKind>;
