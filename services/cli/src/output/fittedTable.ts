import { wrapped } from './inWords.ts';
import { type Column, gap, lineWidth, table } from './table.ts';

type Row = readonly (string | null)[];

/**
 * A table whose entries of words, those to the left, are broken between words where it would be wider than a
 * line: the widest column first, none below its longest word. Wider than a line it is only where words alone are.
 */
export function fittedTable(columns: readonly Column[], rows: readonly Row[]): string[] {
  const widths = fittingWidths(columns, rows);
  const broken = rows.flatMap((row) => {
    const parts = row.map((entry, at) => (entry === null ? [null] : wrapped(entry, widths[at]!).split('\n')));
    const height = Math.max(...parts.map(({ length }) => length));
    return Array.from({ length: height }, (_, line) =>
      parts.map((some) => (line < some.length ? some[line]! : '')),
    );
  });
  return table(columns, broken);
}

/** Characters of each column; of one of numbers all that its entries have. */
function fittingWidths(columns: readonly Column[], rows: readonly Row[]): number[] {
  const longest = (at: number, of: (entry: string) => number): number => {
    const { head, unit = '' } = columns[at]!;
    return Math.max(head.length, unit.length, ...rows.map((row) => of(row[at] ?? '–')));
  };
  const widths = columns.map((_, at) => longest(at, ({ length }) => length));
  const least = columns.map(({ align }, at) =>
    align === 'left'
      ? longest(at, (entry) => Math.max(...entry.split(' ').map(({ length }) => length)))
      : widths[at]!,
  );
  const all = () => widths.reduce((sum, width) => sum + width, gap.length * (widths.length - 1));
  while (all() > lineWidth) {
    const places = widths.flatMap((width, at) => (width > least[at]! ? [at] : []));
    if (places.length === 0) break;
    widths[places.reduce((widest, at) => (widths[at]! > widths[widest]! ? at : widest))]! -= 1;
  }
  return widths;
}
