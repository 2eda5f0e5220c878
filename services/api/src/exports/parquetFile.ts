import { once } from 'node:events';
import { PassThrough, type Readable } from 'node:stream';
import type { Candidate } from '@tiegel/contract';
import { ByteWriter, parquetWriteRows } from 'hyparquet-writer';
import type { Export } from './export.ts';
import { type ExportColumn, exportColumns } from './exportColumns.ts';
import { provenanceTexts } from './provenance.ts';

/** Rows held at once: with some 30 columns, about 10 MB. */
const rowsInGroup = 5000;

/**
 * Candidates as an Apache Parquet file, written row group by row group as the reader takes them.
 * Columns bear bare names; the provenance and `units` (JSON, by column) stand in its key-value
 * metadata.
 */
export function parquetFile({ head, about, rows }: Export): Readable {
  const columns = exportColumns(head);
  const file = new PassThrough();
  const units = Object.fromEntries(columns.map(({ name, unit }) => [name, unit]));
  const metadata = [...provenanceTexts(about), ['units', JSON.stringify(units)] as const];
  const records = recordsOf(rows, columns);
  const written = Promise.resolve(
    parquetWriteRows({
      writer: writerTo(file),
      rows: records,
      columns: columns.map(({ name, type }) => ({ name, type, nullable: type === 'DOUBLE' })),
      rowGroupSize: rowsInGroup,
      kvMetadata: metadata.map(([key, value]) => ({ key, value })),
      createdBy: `tiegel ${about.engineVersion}`,
    }),
  );
  written
    .then(() => file.end())
    .catch((error: Error) => file.destroy(error))
    // The library leaves a source open that it did not read to its end.
    .finally(() => records.return(undefined));
  return file;
}

function* recordsOf(
  rows: Iterable<Candidate>,
  columns: readonly ExportColumn[],
): Generator<Record<string, unknown>> {
  for (const candidate of rows) {
    yield Object.fromEntries(columns.map(({ name, value }) => [name, value(candidate)]));
  }
}

/** A writer that hands on its bytes after each row group, and waits while the reader is slower. */
function writerTo(file: PassThrough): ByteWriter & { flush: () => Promise<void> } {
  const writer = new ByteWriter();
  const gone = new AbortController();
  file.once('close', () => gone.abort());
  const flush = async () => {
    const bytes = Buffer.from(writer.buffer.slice(0, writer.index));
    writer.index = 0;
    gone.signal.throwIfAborted();
    if (!file.write(bytes)) await once(file, 'drain', { signal: gone.signal });
  };
  return Object.assign(writer, { flush, finish: flush });
}
