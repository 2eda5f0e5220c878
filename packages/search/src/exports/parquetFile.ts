import { once } from 'node:events';
import { PassThrough, type Readable } from 'node:stream';
import type { Candidate } from '@tiegel/contract';
import { ByteWriter, ParquetWriter, schemaFromColumnData } from 'hyparquet-writer';
import type { Export } from './export.ts';
import { type ExportColumn, exportColumns } from './exportColumns.ts';
import { inBatches } from './inBatches.ts';
import { inTurns } from './inTurns.ts';
import { provenanceTexts } from './provenance.ts';

/** Rows held at once, with their columns: some 10 MB. */
const rowsInGroup = 5000;
/** Rows read between two turns of others: some 10 ms. A whole number of times in a group. */
const rowsAtOnce = 200;

/**
 * Candidates as an Apache Parquet file, written row group by row group as the reader takes them.
 * Columns bear bare names; the provenance and `units` (JSON, by column) stand in its key-value
 * metadata.
 */
export function parquetFile(one: Export): Readable {
  const file = new PassThrough();
  write(one, file).then(
    () => file.end(),
    (error: Error) => file.destroy(error),
  );
  return file;
}

async function write({ head, about, rows }: Export, file: PassThrough): Promise<void> {
  const columns = exportColumns(head);
  const units = Object.fromEntries(columns.map(({ name, unit }) => [name, unit]));
  const metadata = [...provenanceTexts(about), ['units', JSON.stringify(units)] as const];
  const parquet = new ParquetWriter({
    writer: writerTo(file),
    schema: schemaFromColumnData({ columnData: columns.map((column) => filled(column, [])) }),
    kvMetadata: metadata.map(([key, value]) => ({ key, value })),
    createdBy: `tiegel ${about.engineVersion}`,
  });
  for await (const group of groups(rows)) {
    const columnData = [];
    for await (const column of inTurns(columns)) columnData.push(filled(column, group.map(column.value)));
    await parquet.write({ columnData, rowGroupSize: rowsInGroup });
  }
  await parquet.finish();
}

/** Rows in groups; others have their turn while one is read. */
async function* groups(rows: Export['rows']): AsyncGenerator<Candidate[]> {
  let group: Candidate[] = [];
  for await (const batch of inTurns(inBatches(rows, rowsAtOnce))) {
    group.push(...batch);
    if (group.length < rowsInGroup) continue;
    yield group;
    group = [];
  }
  if (group.length > 0) yield group;
}

function filled({ name, type }: ExportColumn, data: (number | string | null)[]) {
  return { name, type, data, nullable: type === 'DOUBLE' };
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
