import type { ProblemKind } from '../problemKind.ts';

/** Columns of element data of one’s own. */
export const columnProblems = {
  'column/unknown': {
    status: 404,
    exit: 1,
    text: ({ id }: { id: string }) => `No column of one’s own is called "${id}".`,
    remedy: 'GET /api/v1/columns lists those in force.',
  },
  'column/too-large': {
    status: 413,
    exit: 1,
    text: ({ size, limit, of }: { size: number; limit: number; of: string }) =>
      `The column has ${size} ${of}; at most ${limit} are read.`,
    remedy: 'A column has one row for each element: leave everything else out.',
  },
  'column/unreadable': {
    status: 400,
    exit: 1,
    text: ({ line, what }: { line: number; what: string }) =>
      `The column cannot be read at line ${line}: ${what}.`,
    remedy:
      'Separate fields with commas, or with semicolons or tabs throughout; put a field that holds such a sign or a quote in double quotes and double the quotes in it.',
  },
  'column/empty': {
    status: 400,
    exit: 1,
    text: () => 'The column has no rows.',
    remedy: 'Write the header symbol,value,name,unit,mixing and below it a row for each element.',
  },
  'column/missing-column': {
    status: 400,
    exit: 1,
    text: ({ column, meant }: { column: string; meant: string }) =>
      `The header has no "${column}"${meant === '' ? '.' : `; did you mean it by "${meant}"?`}`,
    remedy: 'Begin with the header symbol,value,name,unit,mixing, separated by commas, semicolons or tabs.',
  },
  'column/repeated-column': {
    status: 400,
    exit: 1,
    text: ({ column }: { column: string }) => `The header has "${column}" twice.`,
    remedy: ({ column }: { column: string }) => `Keep one "${column}".`,
  },
  'column/row-length': {
    status: 400,
    exit: 1,
    text: ({ line, fields, columns }: { line: number; fields: number; columns: number }) =>
      `Line ${line} has ${fields} fields where the header has ${columns}.`,
    remedy:
      'Write a field for each part of the header, empty where nothing is said; a decimal comma splits a number in two.',
  },
  'column/repeated-element': {
    status: 400,
    exit: 1,
    text: ({ line, symbol, first }: { line: number; symbol: string; first: number }) =>
      `${symbol} has a value on line ${first} and another on line ${line}.`,
    remedy: ({ symbol }: { line: number; symbol: string; first: number }) => `Keep one row for ${symbol}.`,
  },
  'column/value': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The value on line ${line} is "${found}".`,
    remedy:
      'Write a number of at most 1e15 in size, in digits with a decimal point; leave out the row of an element whose value is unknown.',
  },
  'column/decimal-comma': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) =>
      `The value on line ${line}, "${found}", has a comma in it.`,
    remedy: 'Write decimals with a point and thousands without a sign: 1234.50.',
  },
  'column/name': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The name on line ${line} is "${found}".`,
    remedy:
      'Give the column a name of at most 60 characters that begins with a letter from A to Z, as in Thermal conductivity.',
  },
  'column/name-taken': {
    status: 400,
    exit: 1,
    text: ({ line, name }: { line: number; name: string }) =>
      `The name on line ${line} gives "${name}", which is a column already.`,
    remedy: 'Choose another name.',
  },
  'column/unit': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The unit on line ${line} is "${found}".`,
    remedy: 'Write the unit in at most 30 characters, as in W/(m K); leave it empty for a plain number.',
  },
  'column/mixing': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The mixing on line ${line} is "${found}".`,
    remedy: 'Write mole, mass or volume: what the values are weighted by in an alloy.',
  },
  'column/several': {
    status: 400,
    exit: 1,
    text: ({ line, field, found, first }: { line: number; field: string; found: string; first: string }) =>
      `The ${field} on line ${line} is "${found}", the first row said "${first}".`,
    remedy:
      'Say name, unit and mixing in the first row and leave them empty below; give another column a file of its own.',
  },
} satisfies Record<string, ProblemKind>;
