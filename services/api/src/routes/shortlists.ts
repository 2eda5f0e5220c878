import {
  type ShortlistFormat,
  shortlistBySchema,
  shortlistChangeSchema,
  shortlistFormats,
  shortlistNameSchema,
  shortlistSchema,
} from '@tiegel/contract';
import { mostPicked } from '@tiegel/contract/terms';
import { shortlistFile } from '@tiegel/search/shortlistFile';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const tags = ['shortlists'];
const params = z.object({ id: z.string().describe('Id of the shortlist.') });
const mostChanges = 500;

const historySchema = z.array(shortlistChangeSchema.extend({ sequence: z.int(), at: z.string() }));

const types: Record<ShortlistFormat, string> = {
  html: 'text/html; charset=utf-8',
  csv: 'text/csv; charset=utf-8',
};

/** /shortlists: lists of alloys that people agree on with each other; see shortlistOf of packages/contract. */
export function shortlistRoutes(app: Server, { shortlists, searches }: Parts): void {
  app.get(
    '/shortlists',
    {
      schema: {
        summary: 'Every shortlist, the newest first',
        tags,
        response: { 200: z.object({ items: z.array(shortlistSchema) }), ...problemAnswers() },
      },
    },
    () => ({ items: shortlists.list() }),
  );

  app.post(
    '/shortlists',
    {
      schema: {
        summary: 'Begins a shortlist',
        tags,
        body: z.strictObject({
          name: shortlistNameSchema,
          by: shortlistBySchema,
        }),
        response: { 201: shortlistSchema, ...problemAnswers(413, 415) },
      },
    },
    async (request, reply) => {
      const list = shortlists.create(request.body.name, request.holder?.name ?? request.body.by);
      return reply.code(201).header('location', `/api/v1/shortlists/${list.id}`).send(list);
    },
  );

  app.get(
    '/shortlists/:id',
    {
      schema: {
        summary: 'A shortlist with every change that was made to it',
        tags,
        params,
        response: { 200: shortlistSchema.extend({ history: historySchema }), ...problemAnswers(404) },
      },
    },
    (request) => ({
      ...shortlists.view(request.params.id),
      history: shortlists.history(request.params.id),
    }),
  );

  app.patch(
    '/shortlists/:id',
    {
      schema: {
        summary: 'Takes changes, all or none',
        description:
          'Each says which state of the list its author had seen. Two people lose nothing to each other: where both ' +
          'set the same thing, both values are kept until somebody who saw both decides. A change sent twice counts once.',
        tags,
        params,
        body: z.strictObject({
          changes: z
            .array(shortlistChangeSchema)
            .min(1)
            .max(mostChanges)
            .describe(`Write 1 to ${mostChanges} changes.`),
        }),
        response: { 200: shortlistSchema, ...problemAnswers(404, 413, 415) },
      },
    },
    ({ params: { id }, body: { changes }, holder }) =>
      shortlists.change(id, holder === null ? changes : changes.map((one) => ({ ...one, by: holder.name }))),
  );

  app.post(
    '/shortlists/:id/pick',
    {
      schema: {
        summary: 'Adds a spread of the candidates of a search, so that the list is not ten neighbours',
        tags,
        params,
        body: z.strictObject({
          search: z.string().min(1).max(64).describe('Write the id of a finished search.'),
          count: z.int().min(1).max(mostPicked).describe(`Write how many, 1 to ${mostPicked}.`),
          onePerSystem: z
            .boolean()
            .describe('Write true to take only the best of each set of elements.')
            .default(false),
          by: shortlistBySchema,
        }),
        response: { 200: shortlistSchema, ...problemAnswers(404, 409, 413, 415) },
      },
    },
    ({ params: { id }, body, holder }) =>
      shortlists.pick(id, holder === null ? body : { ...body, by: holder.name }),
  );

  app.get(
    '/shortlists/:id/export',
    {
      exposeHeadRoute: false,
      schema: {
        summary: 'A shortlist as one file: a page that opens without the program, or a table',
        tags,
        produces: Object.values(types),
        params,
        querystring: z.object({ format: z.enum(shortlistFormats).describe('Write html or csv.') }),
        response: { 200: z.any().describe('The file'), ...problemAnswers(404) },
      },
    },
    async (request, reply) => {
      const list = shortlists.view(request.params.id);
      const { format } = request.query;
      const name = `shortlist-${list.id}.${format}`;
      return reply
        .type(types[format])
        .header('content-disposition', `attachment; filename="${name}"`)
        .send(shortlistFile(list, format, { prices: searches.prices(), pairs: searches.pairs() }));
    },
  );
}
