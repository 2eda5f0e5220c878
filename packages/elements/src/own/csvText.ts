import type { Separator } from '../separatorOf.ts';

/** A table as CSV (RFC 4180, lines ended by \n): a field with a comma, a quote, a line end or spaces around it in quotes. */
export function csvText(header: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return [header, ...rows].map((row) => `${csvLine(row)}\n`).join('');
}

/** One row of it, or of a table with another separator, without its end. */
export function csvLine(row: readonly (string | number)[], separator: Separator = ','): string {
  return row.map((field) => quoted(String(field), separator)).join(separator);
}

function quoted(text: string, separator: Separator): string {
  return text.includes(separator) || /["\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
