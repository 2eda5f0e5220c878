import type { Separator } from './separatorOf.ts';

/** A row of a CSV text: its fields, and the line (from 1) on which it begins. */
export interface CsvRow {
  line: number;
  fields: string[];
}

/** Where a CSV text breaks its own rules. */
export interface CsvBreak {
  line: number;
  what: string;
}

const quotedField = /"[^"]*(?:""[^"]*)*"/y;
const plainFields = { ',': /[^",\r\n]*/y, ';': /[^";\r\n]*/y, '\t': /[^"\t\r\n]*/y };
const endsOfField = { ',': /,|\r\n|\n|\r|$/y, ';': /;|\r\n|\n|\r|$/y, '\t': /\t|\r\n|\n|\r|$/y };

/**
 * Splits a CSV text (RFC 4180: commas, or another separator, double quotes doubled inside quotes, any line end, a byte
 * order mark at the start) into rows. Unquoted fields lose the spaces around them; lines with
 * nothing on them are left out. Stops at the first break of the rules and says where.
 */
export function csvRows(
  text: string,
  separator: Separator = ',',
): { rows: CsvRow[]; broken: CsvBreak | null } {
  const [plainField, endOfField] = [plainFields[separator], endsOfField[separator]];
  const rows: CsvRow[] = [];
  let row: CsvRow = { line: 1, fields: [] };
  let line = 1;
  let index = text.startsWith('\uFEFF') ? 1 : 0;
  const match = (pattern: RegExp): string | null => {
    pattern.lastIndex = index;
    const found = pattern.exec(text);
    if (found !== null) index = pattern.lastIndex;
    return found?.[0] ?? null;
  };
  while (true) {
    const quoted = match(quotedField);
    row.fields.push(quoted === null ? match(plainField)!.trim() : quoted.slice(1, -1).replaceAll('""', '"'));
    line += quoted?.match(/\r\n|\n|\r/g)?.length ?? 0;
    const end = match(endOfField);
    if (end === null) return { rows, broken: { line, what: brokenQuotes(quoted !== null) } };
    if (end === separator) continue;
    if (row.fields.length > 1 || row.fields[0] !== '') rows.push(row);
    if (end === '') return { rows, broken: null };
    line += 1;
    row = { line, fields: [] };
  }
}

function brokenQuotes(afterQuotes: boolean): string {
  return afterQuotes
    ? 'something follows a closing quote'
    : 'a quote stands inside a field that does not begin with one, or is never closed';
}
