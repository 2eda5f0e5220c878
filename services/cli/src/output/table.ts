/** A column of a table for reading: its head, the unit below it, and where its entries stand. */
export interface Column {
  head: string;
  unit?: string;
  align?: 'left' | 'right';
}

/** Characters that a line for reading may have. */
export const lineWidth = 80;

/** Between two columns. */
export const gap = '  ';

/**
 * Lines of a table in plain text: numbers to the right under their head and unit, '–' for what is
 * missing. Columns are as wide as what they hold.
 */
export function table(columns: readonly Column[], rows: readonly (readonly (string | null)[])[]): string[] {
  const units = columns.some(({ unit }) => unit !== undefined && unit !== '');
  const heads = [columns.map(({ head }) => head), ...(units ? [columns.map(({ unit }) => unit ?? '')] : [])];
  const lines = [...heads, ...rows.map((row) => row.map((entry) => entry ?? '–'))];
  const widths = columns.map((_, index) => Math.max(...lines.map((line) => line[index]!.length)));
  const written = lines.map((line) => lineOf(line, columns, widths));
  const rule = '─'.repeat(widths.reduce((sum, width) => sum + width, gap.length * (widths.length - 1)));
  return [...written.slice(0, heads.length), rule, ...written.slice(heads.length)];
}

function lineOf(entries: readonly string[], columns: readonly Column[], widths: readonly number[]): string {
  return entries
    .map((entry, index) =>
      columns[index]!.align === 'left' ? entry.padEnd(widths[index]!) : entry.padStart(widths[index]!),
    )
    .join(gap)
    .trimEnd();
}
