import { type Fault, ProblemError } from '@tiegel/contract/terms';
import { symbolFault } from '../elementSymbol.ts';
import { csvText } from './csvText.ts';
import { isShown, type OwnRow, type OwnTable, readOwnTable, repeatedRows, wrongValue } from './ownTable.ts';

/** The mixing enthalpy of a pair of somebody's own, in the place of the project's: a before b in the alphabet. */
export interface PairValue {
  a: string;
  b: string;
  /** kJ/mol of atoms, of the equimolar binary liquid */
  mixingEnthalpy: number;
  /** where it is from, in words */
  source: string;
}

const columns = ['a', 'b', 'mixingEnthalpy', 'source'] as const;
type Column = (typeof columns)[number];
const table: OwnTable<Column> = {
  columns,
  needed: ['a', 'b', 'mixingEnthalpy'],
  numbers: ['mixingEnthalpy'],
  mostRows: 2000,
};
const greatest = 1000;
const longestSource = 200;

/**
 * Reads mixing enthalpies of one's own: CSV with the header a, b, mixingEnthalpy, source in any
 * order, source may be left out. At most 2000 rows.
 *
 *   a,b,mixingEnthalpy,source
 *   Al,Ni,-24,invented for this example
 *
 * @throws ProblemError with every fault, pointed at as /rows/3/a (rows from 0, header not counted):
 *   import/..., element/..., request/wrong-value
 */
export function readPairValues(text: string): PairValue[] {
  const { rows, faults } = readOwnTable(text, table);
  faults.push(
    ...rows.flatMap(rowFaults),
    ...repeatedRows(rows, ({ of }) => {
      const [a, b] = [of('a'), of('b')].sort();
      return { key: `${a}-${b}`, what: `The pair ${a}-${b}`.slice(0, 60) };
    }),
  );
  if (faults.length > 0) throw new ProblemError(faults);
  return rows.map(({ of }) => {
    const [a, b] = [of('a'), of('b')].sort() as [string, string];
    return { a, b, mixingEnthalpy: Number(of('mixingEnthalpy')) + 0, source: of('source') };
  });
}

/** The same as a file that readPairValues reads. */
export function pairValuesCsv(values: readonly PairValue[]): string {
  return csvText(
    columns,
    values.map(({ a, b, mixingEnthalpy, source }) => [a, b, mixingEnthalpy, source]),
  );
}

function rowFaults(row: OwnRow<Column>): Fault[] {
  const { of, pointer, line } = row;
  const symbols = (['a', 'b'] as const).map((column) =>
    symbolFault(of(column), `${pointer}/${column}`, ` on line ${line}`),
  );
  const found = [
    ...symbols,
    of('a') === of('b') && symbols[0] === null
      ? wrongValue(
          row,
          'b',
          'Write two different elements: an element with itself has no enthalpy of mixing.',
        )
      : null,
    isEnthalpy(of('mixingEnthalpy'))
      ? null
      : wrongValue(
          row,
          'mixingEnthalpy',
          `Write kJ/mol from -${greatest} to ${greatest}, in digits with a decimal point, negative where the two attract.`,
        ),
    isShown(of('source'), longestSource)
      ? null
      : wrongValue(
          row,
          'source',
          `Say on one line, in at most ${longestSource} characters, where the value is from.`,
        ),
  ];
  return found.filter((one) => one !== null);
}

function isEnthalpy(text: string): boolean {
  return /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?$/.test(text) && Math.abs(Number(text)) <= greatest;
}
