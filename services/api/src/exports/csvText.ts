import { stringify } from 'csv-stringify/sync';
import type { Export } from './export.ts';
import { exportColumns } from './exportColumns.ts';
import { inBatches } from './inBatches.ts';
import { provenanceTexts } from './provenance.ts';

const rowsAtOnce = 200;

/**
 * Candidates as CSV (RFC 4180, lines end with a line feed): first '# key: value' lines of the
 * provenance, then the head with units, then a line a candidate. Numbers in full double precision
 * with a decimal point, an empty field where there is no value. Text that a spreadsheet would
 * take for a formula is quoted with an apostrophe.
 */
export function* csvText({ head, about, rows }: Export): Generator<string> {
  const columns = exportColumns(head);
  const names = columns.map(({ name, unit }) => (unit === '' ? name : `${name} (${unit})`));
  yield provenanceTexts(about)
    .map(([key, text]) => `# ${key}: ${text}\n`)
    .join('');
  yield stringify([names]);
  for (const batch of inBatches(rows, rowsAtOnce)) {
    yield stringify(
      batch.map((candidate) => columns.map(({ value }) => value(candidate))),
      { escape_formulas: true },
    );
  }
}
