/** A table as CSV (RFC 4180, lines ended by \n): a field with a comma, a quote, a line end or spaces around it in quotes. */
export function csvText(header: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return [header, ...rows].map((row) => `${csvLine(row)}\n`).join('');
}

/** One row of it, without its end. */
export function csvLine(row: readonly (string | number)[]): string {
  return row.map((field) => quoted(String(field))).join(',');
}

function quoted(text: string): string {
  return /[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
