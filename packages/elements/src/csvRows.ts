import { type Separator, signsBeforeTable } from './separatorOf.ts';

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
/** No table has nearly so many columns; a text of commas alone would be a row of a million fields. */
const mostFields = 1000;

/**
 * Splits a CSV text (RFC 4180: commas, or another separator, double quotes doubled inside quotes, any line end, a byte
 * order mark or a line that states the separator at the start) into rows. Unquoted fields lose the spaces around them; lines with
 * nothing on them are left out. Stops at the first break of the rules and says where.
 */
export function csvRows(
  text: string,
  separator: Separator = ',',
): { rows: CsvRow[]; broken: CsvBreak | null } {
  const rows: CsvRow[] = [];
  let index = signsBeforeTable(text);
  let line = index > 1 ? 2 : 1;
  let row: CsvRow = { line, fields: [] };
  const quotedHere = (): string | null => {
    quotedField.lastIndex = index;
    return quotedField.exec(text)?.[0] ?? null;
  };
  while (true) {
    const quoted = text[index] === '"' ? quotedHere() : null;
    const start = index;
    index = quoted === null ? endOfPlain(text, start, separator) : start + quoted.length;
    const field = text.slice(start, index);
    row.fields.push(quoted === null ? field.trim() : field.slice(1, -1).replaceAll('""', '"'));
    line += quoted?.match(/\r\n|\n|\r/g)?.length ?? 0;
    if (row.fields.length > mostFields)
      return { rows, broken: { line, what: `it has more than ${mostFields} fields` } };
    const end = endOfField(text, index, separator);
    if (end === null) return { rows, broken: { line, what: brokenQuotes(quoted !== null) } };
    index += end.length;
    if (end === separator) continue;
    const isEmpty = row.fields.length === 1 && row.fields[0] === '';
    if (!isEmpty) rows.push(row);
    if (end === '') return { rows, broken: null };
    line += 1;
    if (isEmpty) {
      row.fields.pop();
      row.line = line;
    } else row = { line, fields: [] };
  }
}

/** Where a field that begins at `index` without a quote ends. Sign by sign: an expression tried for each field took five times as long. */
function endOfPlain(text: string, index: number, separator: Separator): number {
  let end = index;
  for (; end < text.length; end += 1) {
    const sign = text[end];
    if (sign === separator || sign === '\n' || sign === '\r' || sign === '"') break;
  }
  return end;
}

/** What ends a field there: the separator, the end of a line, '' at the end of the text; null for anything else. */
function endOfField(text: string, index: number, separator: Separator): string | null {
  const sign = text[index] ?? '';
  if (sign === '\r' && text[index + 1] === '\n') return '\r\n';
  return sign === separator || sign === '\n' || sign === '\r' || sign === '' ? sign : null;
}

function brokenQuotes(afterQuotes: boolean): string {
  return afterQuotes
    ? 'something follows a closing quote'
    : 'a quote stands inside a field that does not begin with one, or is never closed';
}
