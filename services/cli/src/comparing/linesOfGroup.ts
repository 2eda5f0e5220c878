import {
  type ComparisonCell,
  type ComparisonGroup,
  type ComparisonRow,
  differenceTerms,
  extremeOf,
} from '@tiegel/contract/terms';
import { wrapped } from '../output/inWords.ts';
import { lineWidth, table } from '../output/table.ts';

/** Names of lines are broken before a table becomes wider than a line, but not narrower than this. */
const narrowestName = 24;
/** Longer entries are sentences, which are read below each other. */
const longestEntry = 10;

const marks = { highest: '▲', lowest: '▼' };

/**
 * Lines of one group: a table where it fits into a line or holds nothing but numbers and the like, else what
 * is compared one below the other, alloys of which the same is said together.
 */
export function linesOfGroup({ rows }: ComparisonGroup): string[] {
  const longest = Math.max(...rows.map(({ name }) => name.length));
  for (let width = longest; width >= Math.min(longest, narrowestName); width--) {
    const lines = asTable(rows, width);
    if (lines.every((line) => line.length <= lineWidth)) return lines;
  }
  const short = rows.every(({ cells }) => cells.every((cell) => said(cell).length <= longestEntry));
  return short ? asTable(rows, narrowestName) : rows.flatMap(belowEachOther);
}

/** ? where nobody can say. */
function signOf({ difference }: ComparisonRow): string {
  return difference === null ? '?' : differenceTerms[difference].sign;
}

function asTable(rows: readonly ComparisonRow[], nameWidth: number): string[] {
  const units = rows.some(({ unit }) => unit !== '');
  const anyMark = rows.some((row) => row.cells.some((_, at) => extremeOf(row, at) !== null));
  const columns = [
    { head: '', align: 'left' as const },
    { head: '', align: 'left' as const },
    ...(units ? [{ head: 'unit', align: 'left' as const }] : []),
    // A mark stands behind the number, and nothing where there is none, so that digits stand below each other.
    ...rows[0]!.cells.map((_, at) => ({ head: `${at + 1}${anyMark ? ' ' : ''}` })),
  ];
  const entries = rows.flatMap((row) => {
    const [name, ...more] = wrapped(row.name, nameWidth).split('\n');
    const cells = row.cells.map((cell, at) => said(cell) + markOf(row, at, anyMark));
    return [
      [signOf(row), name!, ...(units ? [row.unit] : []), ...cells],
      ...more.map((part) => ['', part, ...(units ? [''] : []), ...cells.map(() => '')]),
    ];
  });
  return table(columns, entries);
}

/** What a line says of an alloy; of a limit also whether it is met. */
function said({ text, met }: ComparisonCell): string {
  return met === undefined ? text : `${met ? '✓' : '×'} ${text}`;
}

function markOf(row: ComparisonRow, at: number, anyMark: boolean): string {
  const extreme = extremeOf(row, at);
  return extreme === null ? (anyMark ? ' ' : '') : marks[extreme];
}

function belowEachOther(row: ComparisonRow): string[] {
  const { name, unit, cells } = row;
  const alloysOf = new Map<string, number[]>();
  for (const [at, cell] of cells.entries()) {
    const text = said(cell) + markOf(row, at, false);
    alloysOf.set(text, [...(alloysOf.get(text) ?? []), at + 1]);
  }
  const lines = [...alloysOf].flatMap(([text, alloys]) =>
    indented(`${alloysOf.size === 1 ? 'all' : alloys.join(', ')}: ${text}`),
  );
  const [first, ...more] = indented(unit === '' ? name : `${name}, ${unit}`);
  return [signOf(row).padEnd(indent.length) + first!.trimStart(), ...more, ...lines];
}

const indent = '    ';

/** What does not fit into the first line stands two characters further. */
function indented(text: string): string[] {
  const [first, ...more] = wrapped(text, lineWidth - indent.length - 2).split('\n');
  return [indent + first!, ...more.map((line) => `${indent}  ${line}`)];
}
