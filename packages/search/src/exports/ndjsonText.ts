import type { Export } from './export.ts';
import { inBatches } from './inBatches.ts';

const rowsAtOnce = 200;

/** Candidates as lines of JSON: first { export: provenance }, then one candidate a line, best first. */
export function* ndjsonText({ about, rows }: Export): Generator<string> {
  yield `${JSON.stringify({ export: about })}\n`;
  for (const batch of inBatches(rows, rowsAtOnce)) {
    yield batch.map((candidate) => `${JSON.stringify(candidate)}\n`).join('');
  }
}
