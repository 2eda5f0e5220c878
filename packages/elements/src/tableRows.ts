import { type Fault, fault } from '@tiegel/contract/terms';
import { type CsvBreak, type CsvRow, csvRows } from './csvRows.ts';
import { separatorOf } from './separatorOf.ts';
import { shortened } from './shortened.ts';

const decimalComma = /^[+-]?\d+,\d+(?:[eE][+-]?\d+)?$/;
/** A point or comma before three digits may part thousands: 1,250 is 1.25 or 1250. */
const thousands = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;

const isDecimalComma = (text: string): boolean => decimalComma.test(text) && !thousands.test(text);

/** Spreadsheets end a table with rows in which once something stood: ',,,'. */
const isFilled = ({ fields }: CsvRow): boolean => fields.some((field) => field !== '');

/**
 * The rows of a table, but for those without anything in them, whose fields are parted by commas, semicolons or tabs, as its header has them.
 * Where they are not commas, numbers in the columns `numbers` may have a decimal comma, which becomes
 * a point. One that may be read in two ways stays as it is, for its reader to refuse; where the reader
 * would not, since it has a point, it is told in `faults`, pointed at as /rows/3/price.
 */
export function tableRows(
  text: string,
  numbers: readonly string[],
): { rows: CsvRow[]; broken: CsvBreak | null; faults: Fault[] } {
  const separator = separatorOf(text);
  const { rows: written, broken } = csvRows(text, separator);
  const rows = written.filter(isFilled);
  const [head, ...body] = rows;
  if (head === undefined || separator === ',') return { rows, broken, faults: [] };
  const isNumber = head.fields.map((name) => numbers.includes(name));
  const hasCommas = head.fields.map((_, at) => body.some(({ fields }) => isDecimalComma(fields[at] ?? '')));
  const faults = body.flatMap(({ line, fields }, row) =>
    fields.flatMap((field, at) =>
      isNumber[at] && hasCommas[at] && field.includes('.') && thousands.test(field)
        ? [unclear(head.fields[at]!, line, field, row)]
        : [],
    ),
  );
  const read = (field: string, at: number) =>
    isNumber[at] && isDecimalComma(field) ? field.replace(',', '.') : field;
  return { rows: [head, ...body.map((row) => ({ ...row, fields: row.fields.map(read) }))], broken, faults };
}

function unclear(column: string, line: number, found: string, row: number): Fault {
  const values = {
    place: `The field "${column}" on line ${line}`,
    found: `"${shortened(found)}" among decimal commas, with a point that may be one or part thousands`,
    right: 'Write every decimal of the column alike, and thousands without a sign: 1250,5.',
  };
  return fault('request/wrong-value', values, `/rows/${row}/${column}`);
}
