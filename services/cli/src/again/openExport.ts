import { createReadStream } from 'node:fs';
import type { CandidateQuery } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';
import { placeOf, whyOf } from '../input/readText.ts';
import { cellsOf } from './cellsOf.ts';

/** What the head of an export says that its rows depend on. */
export interface ExportedHead {
  specification: unknown;
  dataVersion: string;
  engineVersion: string;
  counts: unknown;
  prices: unknown;
  /** which of the kept candidates were exported, in which order; without it, all by rank */
  selection?: Pick<CandidateQuery, 'ranges' | 'front' | 'has' | 'without' | 'order' | 'direction'>;
  /** what its rows are; without it, candidates */
  rows?: string;
}

/** Values of a row by column, as the file has them; null where it is empty. */
export type ExportedRow = Record<string, string | number | null>;

/** An export of candidates, read line by line: CSV or NDJSON, told apart by its first character. */
export interface OpenedExport {
  head: ExportedHead;
  rows: AsyncIterable<ExportedRow>;
}

/**
 * Opens an export.
 * @throws ProblemError file/unreadable, export/unreadable
 */
export async function openExport(file: string): Promise<OpenedExport> {
  const lines = linesOf(file)[Symbol.asyncIterator]();
  const next = async () => (await lines.next()).value ?? null;
  const first = await next();
  if (first?.startsWith('# ')) return csvExport(file, first, next);
  if (first?.startsWith('{')) return ndjsonExport(file, first, next);
  throw problem('export/unreadable', {
    file,
    what: 'it begins with neither "# key: value" nor a JSON object',
  });
}

/** Keys of the head whose lines in a CSV are JSON; the others are plain words. */
const jsonKeys = ['specification', 'counts', 'prices', 'selection'];

type Next = () => Promise<string | null>;

async function csvExport(file: string, first: string, next: Next): Promise<OpenedExport> {
  const texts = new Map<string, string>();
  let line: string | null = first;
  for (; line?.startsWith('# '); line = await next()) {
    const colon = line.indexOf(': ');
    texts.set(line.slice(2, colon), line.slice(colon + 2));
  }
  const told = [...texts].map(([key, text]) => [key, jsonKeys.includes(key) ? jsonOf(file, text) : text]);
  const columns = cellsOf(line ?? '').map((cell) => cell.replace(/ \(.*\)$/, ''));
  return { head: completeHead(file, Object.fromEntries(told)), rows: csvRows(columns, next) };
}

async function* csvRows(columns: readonly string[], next: Next): AsyncGenerator<ExportedRow> {
  for (let line = await next(); line !== null; line = await next()) {
    const cells = cellsOf(line);
    yield Object.fromEntries(columns.map((column, index) => [column, cells[index] || null]));
  }
}

async function ndjsonExport(file: string, first: string, next: Next): Promise<OpenedExport> {
  const { export: head } = Object(jsonOf(file, first));
  return { head: completeHead(file, head ?? {}), rows: ndjsonRows(file, next) };
}

async function* ndjsonRows(file: string, next: Next): AsyncGenerator<ExportedRow> {
  for (let line = await next(); line !== null; line = await next()) {
    const { rank, composition, quantities, score } = Object(jsonOf(file, line));
    yield { rank, score, ...Object(quantities), ...Object(composition) };
  }
}

function completeHead(file: string, head: Partial<ExportedHead>): ExportedHead {
  const missing = (['specification', 'dataVersion', 'engineVersion', 'counts'] as const).filter(
    (key) => head[key] === undefined,
  );
  if (head.rows === 'systems')
    throw problem('export/unreadable', { file, what: 'its rows are systems, not candidates' });
  if (missing.length === 0) return head as ExportedHead;
  throw problem('export/unreadable', { file, what: `its head does not say ${missing.join(', ')}` });
}

function jsonOf(file: string, text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw problem('export/unreadable', { file, what: `"${text.slice(0, 40)}" is not JSON` });
  }
}

/**
 * Lines end with a line feed, after a carriage return or not, and with nothing else: readline also
 * breaks at U+2028 and U+2029, which JSON leaves as they are inside a text.
 */
async function* linesOf(file: string): AsyncGenerator<string> {
  const stream = file === '-' ? process.stdin : createReadStream(placeOf(file));
  let begun = '';
  try {
    for await (const text of stream.setEncoding('utf8') as AsyncIterable<string>) {
      const [first, ...more] = text.split('\n');
      begun += first;
      for (const line of more) {
        yield begun.replace(/\r$/, '');
        begun = line;
      }
    }
  } catch (error) {
    throw problem('file/unreadable', { file, why: whyOf(error as NodeJS.ErrnoException) });
  }
  if (begun !== '') yield begun;
}
