import { importKinds, importPreviewSchema, importVersionSchema } from '@tiegel/contract';
import { longestName } from '@tiegel/contract/terms';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { idempotencyHeader } from './idempotencyHeader.ts';
import { numberInAddress } from './numberInAddress.ts';
import { withCsvBody } from './withCsvBody.ts';

const path = '/imports';
const tags = ['data'];
const kind = z.enum(importKinds).describe(`Write one of ${importKinds.join(', ')}.`);
const params = z.object({
  number: numberInAddress(z.int().min(1)).describe('Write the number of an import, from 1.'),
});
const csvBody = z.string().describe('Write a table as CSV, with a header.');
const heads =
  'Headers: prices symbol,pricePerKilogram,currency,date,source; column symbol,value,name,unit,mixing; ' +
  'pairs a,b,mixingEnthalpy,source (kJ/mol); materials material,contains,amounts,purity,price,currency,melting; ' +
  'alloys composition,name,phases,process,doi,note.';

/** Data of one's own: POST /imports/preview, POST and GET /imports, GET and DELETE /imports/:number, POST /imports/:number/restore. */
export function importRoutes(app: Server, { searches: { imports } }: Parts): void {
  withCsvBody(app, (csv) => {
    csv.post(
      `${path}/preview`,
      {
        schema: {
          summary: 'What would become of each row of a file; nothing is stored',
          description: `${heads} A file with faults is answered too, with each of them.`,
          tags,
          consumes: ['text/csv'],
          querystring: z.strictObject({ kind }),
          body: csvBody,
          response: { 200: importPreviewSchema, ...problemAnswers(413, 415) },
        },
      },
      (request) => imports.preview(request.query.kind, request.body),
    );

    csv.post(
      path,
      {
        schema: {
          summary: 'Stores a file under a number of its own, whole or not at all',
          description: `${heads} A row that is refused refuses the file. Searches keep the data that they were planned with.`,
          tags,
          consumes: ['text/csv'],
          headers: idempotencyHeader('The same key answers with the import that it stored first.'),
          querystring: z.strictObject({
            kind,
            name: z
              .string()
              .max(longestName)
              .optional()
              .describe(`Write what it is in at most ${longestName} characters.`),
          }),
          body: csvBody,
          response: { 201: importVersionSchema, ...problemAnswers(413, 415, 422) },
        },
      },
      async (request, reply) => {
        const { kind: asked, name = '' } = request.query;
        const key = request.headers['idempotency-key'] ?? null;
        const stored = imports.enter(asked, request.body, { name, key });
        return reply.code(201).header('location', `/api/v1${path}/${stored.number}`).send(stored);
      },
    );
  });

  app.get(
    path,
    {
      schema: {
        summary: 'Every import, the newest first',
        tags,
        querystring: z.strictObject({ kind: kind.optional() }),
        response: { 200: z.object({ items: z.array(importVersionSchema) }), ...problemAnswers() },
      },
    },
    (request) => ({ items: imports.list(request.query.kind) }),
  );

  app.get(
    `${path}/:number`,
    {
      schema: {
        summary: 'An import with its rows',
        tags,
        params,
        querystring: z.strictObject({
          format: z
            .enum(['csv', 'json'])
            .optional()
            .describe('Write csv for the file alone, or json (the default).'),
        }),
        produces: ['application/json', 'text/csv'],
        response: {
          200: z.union([importVersionSchema.extend({ csv: z.string() }), z.string()]),
          ...problemAnswers(404),
        },
      },
    },
    async (request, reply) => {
      const found = imports.view(request.params.number);
      if (request.query.format !== 'csv') return found;
      reply
        .type('text/csv; charset=utf-8')
        .header('content-disposition', `attachment; filename="import-${found.number}-${found.kind}.csv"`)
        .serializer((text: unknown) => text as string);
      return found.csv;
    },
  );

  app.delete(
    `${path}/:number`,
    {
      schema: {
        summary: 'Takes an import out of force; it can be brought back',
        description: 'What it took the place of holds again: an earlier import, or the data of the program.',
        tags,
        params,
        response: { 204: z.null(), ...problemAnswers(404) },
      },
    },
    async (request, reply) => {
      imports.withdraw(request.params.number);
      return reply.code(204).send(null);
    },
  );

  app.post(
    `${path}/:number/restore`,
    {
      schema: {
        summary: 'Brings back an import that was taken out of force',
        tags,
        params,
        response: { 200: importVersionSchema, ...problemAnswers(404) },
      },
    },
    (request) => imports.restore(request.params.number),
  );
}
