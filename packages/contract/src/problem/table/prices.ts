import type { ProblemKind } from '../problemKind.ts';

/** Price lists. */
export const priceProblems = {
  'prices/too-large': {
    status: 413,
    exit: 1,
    text: ({ size, limit, of }: { size: number; limit: number; of: string }) =>
      `The price list has ${size} ${of}; at most ${limit} are read.`,
    remedy: 'A price list has one row for each element: leave everything else out.',
  },
  'prices/unreadable': {
    status: 400,
    exit: 1,
    text: ({ line, what }: { line: number; what: string }) =>
      `The price list cannot be read at line ${line}: ${what}.`,
    remedy:
      'Separate fields with commas, or with semicolons or tabs throughout; put a field that holds such a sign or a quote in double quotes and double the quotes in it.',
  },
  'prices/empty': {
    status: 400,
    exit: 1,
    text: () => 'The price list has no rows.',
    remedy:
      'Write the header symbol,pricePerKilogram,currency,date,source and below it a row for each element.',
  },
  'prices/missing-column': {
    status: 400,
    exit: 1,
    text: ({ column, meant }: { column: string; meant: string }) =>
      `The price list has no column "${column}"${meant === '' ? '.' : `; did you mean it by "${meant}"?`}`,
    remedy:
      'Begin with the header symbol,pricePerKilogram,currency,date,source, separated by commas, semicolons or tabs.',
  },
  'prices/repeated-column': {
    status: 400,
    exit: 1,
    text: ({ column }: { column: string }) => `The price list has the column "${column}" twice.`,
    remedy: ({ column }: { column: string }) => `Keep one column "${column}".`,
  },
  'prices/row-length': {
    status: 400,
    exit: 1,
    text: ({ line, fields, columns }: { line: number; fields: number; columns: number }) =>
      `Line ${line} has ${fields} fields where the header has ${columns}.`,
    remedy: 'Write a field for each column; a decimal comma splits a number in two, so write 2.50, not 2,50.',
  },
  'prices/price': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The price on line ${line} is "${found}".`,
    remedy:
      'Write a number above 0 and at most 1e9, in digits with a decimal point, as in 2.50; leave out the row of an element whose price is unknown.',
  },
  'prices/decimal-comma': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) =>
      `The price on line ${line}, "${found}", has a comma in it.`,
    remedy: 'Write decimals with a point and thousands without a sign: 1234.50.',
  },
  'prices/repeated-element': {
    status: 400,
    exit: 1,
    text: ({ line, symbol, first }: { line: number; symbol: string; first: number }) =>
      `${symbol} has a price on line ${first} and another on line ${line}.`,
    remedy: ({ symbol }: { line: number; symbol: string; first: number }) => `Keep one row for ${symbol}.`,
  },
  'prices/currency': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The currency on line ${line} is "${found}".`,
    remedy: 'Write the three capital letters of ISO 4217, as in EUR.',
  },
  'prices/several-currencies': {
    status: 400,
    exit: 1,
    text: ({ line, found, first }: { line: number; found: string; first: string }) =>
      `The price on line ${line} is in ${found}, the list began in ${first}.`,
    remedy: ({ first }: { line: number; found: string; first: string }) =>
      `Convert every price to one currency, for example ${first}.`,
  },
  'prices/date': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The date on line ${line} is "${found}".`,
    remedy: 'Write a day of the calendar as year-month-day, as in 2026-11-25.',
  },
  'prices/source': {
    status: 400,
    exit: 1,
    text: ({ line }: { line: number }) => `The price on line ${line} has no source that can be shown.`,
    remedy: 'Say in at most 200 characters on one line where the price comes from.',
  },
} satisfies Record<string, ProblemKind>;
