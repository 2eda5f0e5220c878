import { Readable } from 'node:stream';
import { type CandidateQuery, problem } from '@tiegel/contract';
import { z } from 'zod';
import { csvText } from '../exports/csvText.ts';
import type { Export } from '../exports/export.ts';
import { ndjsonText } from '../exports/ndjsonText.ts';
import { parquetFile } from '../exports/parquetFile.ts';
import { provenance } from '../exports/provenance.ts';
import { mostSpreadsheetRows, spreadsheet } from '../exports/spreadsheet.ts';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { candidateQuery, selectionSchema } from './candidateQuery.ts';
import { moreOf, takeMore } from './moreSelection.ts';
import { searchParameters } from './searchParameters.ts';

const bytesAhead = 64 * 1024;
const textStream = (text: Iterable<string>) =>
  Readable.from(text, { objectMode: false, highWaterMark: bytesAhead });

const formats = {
  csv: { type: 'text/csv; charset=utf-8', write: (one: Export) => textStream(csvText(one)) },
  ndjson: { type: 'application/x-ndjson', write: (one: Export) => textStream(ndjsonText(one)) },
  parquet: { type: 'application/vnd.apache.parquet', write: parquetFile },
  xlsx: {
    type: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
    write: spreadsheet,
  },
};

/** GET /searches/:id/export: kept candidates as a file, streamed as fast as the reader takes it. */
export function exportRoute(app: Server, { searches }: Parts): void {
  app.get(
    '/searches/:id/export',
    {
      exposeHeadRoute: false,
      preValidation: takeMore(searches),
      schema: {
        summary: 'The kept candidates as a file',
        description:
          'The same filters and order as for the pages of candidates; the file says all that its rows depend on.',
        tags: ['candidates'],
        produces: Object.values(formats).map(({ type }) => type),
        params: searchParameters,
        querystring: selectionSchema.extend({
          format: z
            .enum(['csv', 'ndjson', 'parquet', 'xlsx'])
            .describe('Write csv, ndjson, parquet or xlsx.'),
        }),
        response: { 200: z.any().describe('The file'), ...problemAnswers(400, 404, 409) },
      },
    },
    async (request, reply) => {
      const { format, ...selection } = request.query;
      const query = candidateQuery(selection, moreOf(request));
      if (format === 'xlsx') await refuseManyRows(searches, request.params.id, query);
      await searches.ready(request.params.id, query);
      const { head, rows } = searches.export(request.params.id, query);
      const { type, write } = formats[format];
      return reply
        .type(type)
        .header('content-disposition', `attachment; filename="${fileName(head.search, format)}"`)
        .send(write({ head, about: provenance(head, query), rows }));
    },
  );
}

/** Throws export/too-many-rows for more than a spreadsheet is made of. */
async function refuseManyRows(searches: Parts['searches'], id: string, query: CandidateQuery): Promise<void> {
  const { meeting } = await searches.values(id, query, [], 1);
  if (meeting > mostSpreadsheetRows)
    throw problem('export/too-many-rows', { rows: meeting, most: mostSpreadsheetRows }, '/format');
}

const mostWords = 8;

/** A name of plain letters that every file system takes; the id tells searches of one name apart. */
function fileName({ name, id }: { name: string; id: string }, format: string): string {
  const words = name.toLowerCase().match(/[a-z0-9]{1,30}/g) ?? [];
  return `${[...words.slice(0, mostWords), id].join('-')}.${format}`;
}
