import { Readable } from 'node:stream';
import type { CandidateQuery, SearchView } from '@tiegel/contract';
import { type ExportFormat, problem } from '@tiegel/contract/terms';
import type { Searches } from '../searches.ts';
import { csvText } from './csvText.ts';
import type { Export } from './export.ts';
import { inTurns } from './inTurns.ts';
import { ndjsonText } from './ndjsonText.ts';
import { parquetFile } from './parquetFile.ts';
import { provenance } from './provenance.ts';
import { mostSpreadsheetRows, spreadsheet } from './spreadsheet.ts';

const bytesAhead = 64 * 1024;
const textStream = (text: Iterable<string>) =>
  Readable.from(inTurns(text), { objectMode: false, highWaterMark: bytesAhead });

const writers: Record<ExportFormat, (one: Export) => Readable> = {
  csv: (one) => textStream(csvText(one)),
  ndjson: (one) => textStream(ndjsonText(one)),
  parquet: parquetFile,
  xlsx: spreadsheet,
};

/**
 * The kept candidates of a search that a query asks for as a file, written as its reader takes it:
 * every one that meets the filters, in the order of the query. The same bytes for whoever asks.
 * @throws ProblemError those of Searches.candidates, and export/too-many-rows for a spreadsheet of more rows than a sheet has
 */
export async function exportFile(
  searches: Pick<Searches, 'ready' | 'values' | 'export'>,
  { id, query, format }: { id: string; query: CandidateQuery; format: ExportFormat },
): Promise<{ search: SearchView; file: Readable }> {
  if (format === 'xlsx') {
    const { meeting } = await searches.values(id, query, [], 1);
    if (meeting > mostSpreadsheetRows)
      throw problem('export/too-many-rows', { rows: meeting, most: mostSpreadsheetRows }, '/format');
  }
  await searches.ready(id, query);
  const { head, rows } = searches.export(id, query);
  return { search: head.search, file: writers[format]({ head, about: provenance(head, query), rows }) };
}
