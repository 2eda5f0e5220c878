import {
  meltEntrySchema,
  meltRecordSchema,
  meltsSchema,
  meltViewSchema,
  meltWithHistorySchema,
} from '@tiegel/contract';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { idempotencyHeader } from './idempotencyHeader.ts';

const tags = ['melts'];
const params = z.object({ id: z.string().describe('Id of the melt.') });

/** GET and POST /melts, GET, PUT and DELETE /melts/:id, POST /melts/:id/restore: what was melted, and what was seen. */
export function meltRoutes(app: Server, { melts }: Parts): void {
  app.get(
    '/melts',
    {
      schema: {
        summary: 'Every melt that was recorded and not deleted, the newest first',
        tags,
        response: { 200: meltsSchema, ...problemAnswers() },
      },
    },
    () => ({ items: melts.list() }),
  );

  app.post(
    '/melts',
    {
      schema: {
        summary: 'Records a melt',
        description:
          'Masses as the balance showed them. A material that the charge sheet names needs no more than its name; ' +
          'the composition as weighed takes the place of the nominal one. What is left out was not measured, not done ' +
          'or not looked at yet; a change states all of it.',
        tags,
        headers: idempotencyHeader(
          'The same key answers with the melt that it recorded first, and records no second one.',
        ),
        body: meltRecordSchema,
        response: { 201: meltViewSchema, ...problemAnswers(404, 413, 415) },
      },
    },
    async (request, reply) => {
      const { body, headers, holder } = request;
      const melt = melts.record(body, headers['idempotency-key'] ?? null, holder?.name ?? null);
      return reply.code(201).header('location', `/api/v1/melts/${melt.id}`).send(melt);
    },
  );

  app.get(
    '/melts/:id',
    {
      schema: {
        summary: 'A melt with its history',
        tags,
        params,
        response: { 200: meltWithHistorySchema, ...problemAnswers(404) },
      },
    },
    (request) => ({
      ...melts.view(request.params.id),
      history: melts.history(request.params.id),
    }),
  );

  app.put(
    '/melts/:id',
    {
      schema: {
        summary: 'Changes a melt; every earlier version is kept',
        tags,
        params,
        body: meltEntrySchema.extend({
          version: z.number().int().describe('Write the version that you change, as it was answered.'),
        }),
        response: { 200: meltViewSchema, ...problemAnswers(404, 409, 413, 415) },
      },
    },
    (request) => {
      const { version, ...entry } = request.body;
      return melts.change(request.params.id, version, entry, request.holder?.name ?? null);
    },
  );

  for (const { method, path, summary, act } of [
    {
      method: 'DELETE',
      path: '/melts/:id',
      summary: 'Deletes a melt; it can be brought back',
      act: melts.remove,
    },
    {
      method: 'POST',
      path: '/melts/:id/restore',
      summary: 'Brings back a melt that was deleted',
      act: melts.restore,
    },
  ] as const) {
    app.route({
      method,
      url: path,
      schema: { summary, tags, params, response: { 200: meltViewSchema, ...problemAnswers(404) } },
      handler: (request) => act(request.params.id),
    });
  }
}
