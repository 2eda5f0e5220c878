import { stringify } from 'csv-stringify/sync';
import type { Export } from './export.ts';
import { exportColumns, headOf } from './exportColumns.ts';
import { inBatches } from './inBatches.ts';
import { provenanceTexts } from './provenance.ts';

const rowsAtOnce = 200;

/**
 * Candidates as CSV (RFC 4180, lines end with a line feed): first '# key: value' lines of the
 * provenance, then the head with units, then a line a candidate. Numbers in full double precision
 * with a decimal point, an empty field where there is no value.
 */
export function* csvText({ head, about, rows }: Export): Generator<string> {
  const columns = exportColumns(head);
  yield provenanceTexts(about)
    .map(([key, text]) => `# ${key}: ${text}\n`)
    .join('');
  yield stringify([columns.map(headOf)], { escape_formulas: true });
  // The cells below the head are numbers and canonical compositions (letters, digits, points):
  // nothing to quote and no formula. To look for them cost more than half of an export.
  for (const batch of inBatches(rows, rowsAtOnce)) {
    yield batch
      .map((candidate) => `${columns.map(({ value }) => value(candidate) ?? '').join(',')}\n`)
      .join('');
  }
}
