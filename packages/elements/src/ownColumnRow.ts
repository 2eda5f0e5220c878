import { type Fault, fault, mixings } from '@tiegel/contract/terms';
import { symbolFault } from './elementSymbol.ts';
import type { TableRow } from './elementTable.ts';
import { shortened } from './shortened.ts';

/** The columns of a file with a column of one's own. */
export const ownColumnFields = ['symbol', 'value', 'name', 'unit', 'mixing'] as const;
type OwnColumnField = (typeof ownColumnFields)[number];
export type OwnColumnRow = TableRow<OwnColumnField>;

/** What is said once for all rows: in the first, and the same or nothing in the others. */
const describing = ['name', 'unit', 'mixing'] as const;

const longestName = 60;
const longestUnit = 30;
const greatestValue = 1e15;

/** What is wrong with symbol and value of a row, each fault pointed at as /rows/3/value. */
export function ownRowFaults({ line, pointer, fields: { symbol, value } }: OwnColumnRow): Fault[] {
  const wrong = symbol === undefined ? null : symbolFault(symbol, `${pointer}/symbol`, ` on line ${line}`);
  const faults = wrong === null ? [] : [wrong];
  if (value === undefined || isValue(value)) return faults;
  const code = /^[+-]?\d[\d.]*,[\d,.]*$/.test(value) ? 'column/decimal-comma' : 'column/value';
  return [...faults, fault(code, { line, found: shortened(value) }, `${pointer}/value`)];
}

/** What is wrong with name, unit and mixing, as the first row says them. */
export function descriptionFaults({ line, pointer, fields }: OwnColumnRow): Fault[] {
  const { name, unit, mixing } = fields;
  const report = (code: 'column/name' | 'column/unit' | 'column/mixing', field: string, found: string) =>
    fault(code, { line, found: shortened(found) }, `${pointer}/${field}`);
  return [
    name !== undefined && !isName(name) && report('column/name', 'name', name),
    unit !== undefined && !isUnit(unit) && report('column/unit', 'unit', unit),
    mixing !== undefined &&
      !(mixings as readonly string[]).includes(mixing) &&
      report('column/mixing', 'mixing', mixing),
  ].filter((one) => one !== false);
}

/** Rows that say of the whole column what the first one does not. */
export function otherDescriptions([first, ...others]: readonly OwnColumnRow[]): Fault[] {
  return others.flatMap(({ line, pointer, fields }) =>
    describing
      .filter((field) => (fields[field] ?? '') !== '' && fields[field] !== first?.fields[field])
      .map((field) => {
        const values = {
          line,
          field,
          found: shortened(fields[field]!),
          first: shortened(first?.fields[field] ?? ''),
        };
        return fault('column/several', values, `${pointer}/${field}`);
      }),
  );
}

/** The name as formulas name it: 'Thermal conductivity' is thermalConductivity. '' where nothing is left. */
export function idOf(name: string): string {
  const words = name
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .split(/[^a-zA-Z0-9]+/)
    .filter((word) => word !== '');
  const [first = '', ...others] = words;
  const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);
  return [first.charAt(0).toLowerCase() + first.slice(1), ...others.map(capital)].join('');
}

function isValue(text: string): boolean {
  return /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?$/.test(text) && Math.abs(Number(text)) <= greatestValue;
}

function isName(text: string): boolean {
  return isShown(text, longestName) && /^[a-zA-Z]/.test(idOf(text));
}

const isUnit = (text: string) => text === '' || isShown(text, longestUnit);
const isShown = (text: string, longest: number) => text.length <= longest && !/\p{Cc}/u.test(text);
