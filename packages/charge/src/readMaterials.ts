import { type Fault, fault, nearest, ProblemError } from '@tiegel/contract/terms';
import { type CsvRow, csvText, formatComposition, tableRows } from '@tiegel/elements';
import type { Materials } from './material.ts';
import { type AmountKind, type MaterialEntry, materialOf, repeatedNames } from './materialEntry.ts';

const longestText = 100_000;
export const mostMaterials = 200;
const columns = ['material', 'contains', 'amounts', 'purity', 'price', 'currency', 'melting'] as const;
type Column = (typeof columns)[number];
const numbers = ['purity', 'price', 'melting'] satisfies Column[];

/**
 * Reads a list of raw materials: CSV whose header names these columns in any order, only `material`
 * of them needed.
 *
 * - material: a name that begins with the symbol of an element in it
 * - contains: a master alloy such as Fe34Nb66; empty: the element that the name begins with
 * - amounts: at.% or wt.%, of what the amounts of a master alloy are; needed where it has several elements
 * - purity: wt.% that is metal, 100 where empty
 * - price, currency: per kg of the material as it is weighed, one currency in the whole list; empty: unknown
 * - melting: melting temperature, K; empty: the mean of its elements stands for it
 *
 *   material,contains,amounts,purity,price,currency,melting
 *   Mn flakes,,,99.7,3.40,EUR,
 *   FeNb66,Fe34Nb66,wt.%,98.5,40,EUR,1853
 *
 * Decimals have a point (or comma, see tableRows). At most 100,000 characters and 200 rows.
 * @throws ProblemError with every fault, pointed at as /rows/3/purity (rows from 0, header not counted):
 *   materials/..., alloy/..., element/..., request/wrong-value
 */
export function readMaterials(text: string): Materials {
  const { rows: all, faults } = rowsOf(text);
  const [head, ...body] = all;
  const wrong = headFaults(head.fields);
  if (wrong.length > 0) throw new ProblemError(wrong);
  const rows = body.map((row, at) => fieldsOf(head, row, `/rows/${at}`, faults));
  const materials = rows.map((row) =>
    row === null ? null : materialOf(entryOf(row, faults), row.pointer, ` on line ${row.line}`, faults),
  );
  faults.push(...repeatedNames(materials, (at) => `/rows/${at}/material`));
  const currency = currencyOf(
    rows.filter((row) => row !== null),
    faults,
  );
  if (faults.length > 0) throw new ProblemError(faults);
  return { materials: materials.filter((material) => material !== null), currency };
}

/** The same as a file that readMaterials reads; amounts of master alloys in wt.%. */
export function materialsCsv({ materials, currency }: Materials): string {
  return csvText(
    columns,
    materials.map(({ name, contains, purity, price, meltingTemperature }) => [
      name,
      formatComposition(contains),
      'wt.%',
      purity,
      price ?? '',
      price === null ? '' : (currency ?? ''),
      meltingTemperature ?? '',
    ]),
  );
}

interface Row {
  line: number;
  pointer: string;
  of: (column: Column) => string;
}

function rowsOf(text: string): { rows: [CsvRow, ...CsvRow[]]; faults: Fault[] } {
  if (text.length > longestText) throw tooLarge(text.length, longestText, 'characters');
  const { rows, broken, faults } = tableRows(text, numbers);
  if (broken !== null) throw new ProblemError([fault('materials/unreadable', { ...broken })]);
  if (rows.length < 2) throw new ProblemError([fault('materials/empty')]);
  if (rows.length - 1 > mostMaterials) throw tooLarge(rows.length - 1, mostMaterials, 'rows');
  return { rows: rows as [CsvRow, ...CsvRow[]], faults };
}

const tooLarge = (size: number, limit: number, of: string) =>
  new ProblemError([fault('materials/too-large', { size, limit, of })]);

function headFaults(found: readonly string[]): Fault[] {
  const strange = found
    .filter((name, at) => !(columns as readonly string[]).includes(name) || found.indexOf(name) !== at)
    .map((name) =>
      fault(
        'materials/column',
        {
          what: `"${name.slice(0, 40)}" is not a column of it or stands there twice`,
          meant: nearest(name, columns) ?? '',
        },
        '/header',
      ),
    );
  if (found.includes('material')) return strange;
  return [
    ...strange,
    fault('materials/column', { what: 'the column "material" is missing', meant: '' }, '/header'),
  ];
}

function fieldsOf(head: CsvRow, { line, fields }: CsvRow, pointer: string, faults: Fault[]): Row | null {
  if (fields.length !== head.fields.length) {
    const what = `it has ${fields.length} fields where the header has ${head.fields.length}`;
    faults.push(fault('materials/unreadable', { line, what }, pointer));
    return null;
  }
  return { line, pointer, of: (column) => fields[head.fields.indexOf(column)] ?? '' };
}

function entryOf({ of, line, pointer }: Row, faults: Fault[]): MaterialEntry {
  const number = (column: (typeof numbers)[number]): number | null => {
    const text = of(column);
    if (text === '') return null;
    if (/^\d+(\.\d+)?([eE][+-]?\d+)?$/.test(text)) return Number(text);
    const values = {
      place: `The ${column} on line ${line}`,
      found: `"${text.slice(0, 40)}"`,
      right: 'Write a number in digits with a decimal point, or leave it empty.',
    };
    faults.push(fault('request/wrong-value', values, `${pointer}/${column}`));
    return null;
  };
  return {
    name: of('material'),
    contains: of('contains'),
    amounts: (of('amounts') || null) as AmountKind | null,
    purity: number('purity'),
    price: number('price'),
    meltingTemperature: number('melting'),
  };
}

function currencyOf(rows: readonly Row[], faults: Fault[]): string | null {
  const priced = rows.filter(({ of }) => of('price') !== '');
  const first = priced[0]?.of('currency') ?? null;
  for (const { of, line, pointer } of priced) {
    const found = of('currency');
    if (!/^[A-Z]{3}$/.test(found) || found !== first) {
      faults.push(fault('materials/currency', { line, found, first: first ?? '' }, `${pointer}/currency`));
    }
  }
  return first;
}
