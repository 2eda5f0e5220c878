import { type ExportFormat, exportFormats } from '@tiegel/contract/terms';
import { exportFile } from '@tiegel/search/exportFile';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { places } from '../places.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { candidateQuery, selectionSchema } from './candidateQuery.ts';
import { moreOf, takeMore } from './moreSelection.ts';
import { searchParameters } from './searchParameters.ts';

const types: Record<ExportFormat, string> = {
  csv: 'text/csv; charset=utf-8',
  ndjson: 'application/x-ndjson',
  parquet: 'application/vnd.apache.parquet',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

/** Open at once: each holds some tens of megabytes until its reader has taken it. */
const mostExports = 4;

/** GET /searches/:id/export: kept candidates as a file, streamed as fast as the reader takes it. */
export function exportRoute(app: Server, { searches }: Parts): void {
  const takePlace = places(mostExports, 'exports');
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
        produces: Object.values(types),
        params: searchParameters,
        querystring: selectionSchema.extend({
          format: z.enum(exportFormats).describe('Write csv, ndjson, parquet or xlsx.'),
        }),
        response: { 200: z.any().describe('The file'), ...problemAnswers(404, 409, 503) },
      },
    },
    async (request, reply) => {
      const { format, ...selection } = request.query;
      const query = candidateQuery(selection, moreOf(request));
      const leave = takePlace();
      const { search, file } = await exportFile(searches, { id: request.params.id, query, format }).catch(
        (error) => {
          leave();
          throw error;
        },
      );
      file.once('close', leave);
      return reply
        .type(types[format])
        .header('content-disposition', `attachment; filename="${fileName(search, format)}"`)
        .send(file);
    },
  );
}

const mostWords = 8;

/** A name of plain letters that every file system takes; the id tells searches of one name apart. */
function fileName({ name, id }: { name: string; id: string }, format: string): string {
  const words = name.toLowerCase().match(/[a-z0-9]{1,30}/g) ?? [];
  return `${[...words.slice(0, mostWords), id].join('-')}.${format}`;
}
