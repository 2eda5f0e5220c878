import type { ProblemKind } from '../problemKind.ts';
import { orMeant } from './words.ts';

/** Raw materials. */
export const materialProblems = {
  'materials/too-large': {
    status: 413,
    exit: 1,
    text: ({ size, limit, of }: { size: number; limit: number; of: string }) =>
      `The list of materials has ${size} ${of}; at most ${limit} are read.`,
    remedy: 'Leave out the materials that the alloy does not need.',
  },
  'materials/unreadable': {
    status: 400,
    exit: 1,
    text: ({ line, what }: { line: number; what: string }) =>
      `The list of materials cannot be read at line ${line}: ${what}.`,
    remedy:
      'Separate fields with commas, or with semicolons or tabs throughout, write decimals with a point, and put a field that holds a comma in double quotes.',
  },
  'materials/empty': {
    status: 400,
    exit: 1,
    text: () => 'The list of materials has no rows.',
    remedy:
      'Write the header material,contains,amounts,purity,price,currency and below it a row for each material.',
  },
  'materials/column': {
    status: 400,
    exit: 1,
    text: ({ what, meant }: { what: string; meant: string }) =>
      `The header of the list of materials is wrong: ${what}${orMeant(meant)}`,
    remedy: 'Use these columns, material always: material,contains,amounts,purity,price,currency,melting.',
  },
  'materials/name': {
    status: 400,
    exit: 1,
    text: ({ name, meant }: { name: string; meant: string; limit: number }) =>
      `The name of the material ${name} does not begin with the symbol of an element that is in it${orMeant(meant)}`,
    remedy: ({ limit }: { name: string; meant: string; limit: number }) =>
      `Begin with a symbol, as in "Mn flakes" or "FeNb66", in at most ${limit} characters on one line.`,
  },
  'materials/amounts': {
    status: 400,
    exit: 1,
    text: ({ name }: { name: string }) =>
      `It is not said what the amounts of the master alloy ${name} count.`,
    remedy: 'Write at.% or wt.% as amounts.',
  },
  'materials/repeated': {
    status: 400,
    exit: 1,
    text: ({ name }: { name: string }) => `Two materials have the name "${name}".`,
    remedy: 'Give each a name of its own, for example with its purity or its supplier.',
  },
  'materials/currency': {
    status: 400,
    exit: 1,
    text: ({ line, found, first }: { line: number; found: string; first: string }) =>
      `The price on line ${line} is in "${found}"${found === first ? '' : `, the list began in "${first}"`}.`,
    remedy: 'Give every price in one currency, in the three capital letters of ISO 4217, as in EUR.',
  },
} satisfies Record<string, ProblemKind>;
