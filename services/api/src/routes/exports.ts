import { type ExportFormat, exportFormats, systemsFormats } from '@tiegel/contract/terms';
import { exportFile } from '@tiegel/search/exportFile';
import { systemsFile } from '@tiegel/search/systemsFile';
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { places } from '../places.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { candidateQuery, selectionSchema, systemsSelectionSchema } from './candidateQuery.ts';
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

/** GET /searches/:id/export and /systems/export: kept candidates, or their systems, as a file, streamed as fast as the reader takes it. */
export function exportRoute(app: Server, { searches, melts }: Parts): void {
  const takePlace = places(mostExports, 'exports');
  const send = async (
    reply: FastifyReply,
    { format, what = [] }: { format: ExportFormat; what?: string[] },
    open: () => ReturnType<typeof exportFile>,
  ) => {
    const leave = takePlace();
    const { search, file } = await open().catch((error) => {
      leave();
      throw error;
    });
    file.once('close', leave);
    const name = fileName(search, what, format);
    return reply
      .type(types[format])
      .header('content-disposition', `attachment; filename="${name}"`)
      .send(file);
  };
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
      return send(reply, { format }, () => exportFile(searches, { id: request.params.id, query, format }));
    },
  );

  app.get(
    '/searches/:id/systems/export',
    {
      exposeHeadRoute: false,
      preValidation: takeMore(searches),
      schema: {
        summary: 'The systems of the kept candidates as a file',
        description:
          'Those of the pages of systems, all of them: the best candidate of each with every quantity, and what is known ' +
          'of it; the file says all that its rows depend on.',
        tags: ['candidates'],
        produces: systemsFormats.map((format) => types[format]),
        params: searchParameters,
        querystring: systemsSelectionSchema.extend({
          format: z.enum(systemsFormats).describe('Write csv or ndjson.'),
        }),
        response: { 200: z.any().describe('The file'), ...problemAnswers(404, 409, 503) },
      },
    },
    async (request, reply) => {
      const { format, explored, ...selection } = request.query;
      const asked = {
        id: request.params.id,
        query: candidateQuery(selection, moreOf(request)),
        explored,
        format,
      };
      const laboratory = { melts: melts.list(), own: searches.imports.alloys() };
      return send(reply, { format, what: [explored === 'no' ? 'unexplored' : 'systems'] }, () =>
        systemsFile(searches, asked, laboratory),
      );
    },
  );
}

const mostWords = 8;

/** A name of plain letters that every file system takes; the id tells searches of one name apart. */
function fileName({ name, id }: { name: string; id: string }, what: string[], format: string): string {
  const words = name.toLowerCase().match(/[a-z0-9]{1,30}/g) ?? [];
  return `${[...words.slice(0, mostWords), id, ...what].join('-')}.${format}`;
}
