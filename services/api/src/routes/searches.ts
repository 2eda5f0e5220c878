import {
  faultsOf,
  ProblemError,
  scheduleSchema,
  searchDifferencesSchema,
  searchViewSchema,
} from '@tiegel/contract';
import { changesSince } from '@tiegel/search';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { specificationSchema } from '../specificationSchema.ts';
import { idempotencyHeader } from './idempotencyHeader.ts';
import { searchParameters } from './searchParameters.ts';

const tags = ['searches'];
const changes = [
  { verb: 'cancel', summary: 'Ends a search for good; what it found so far is not kept' },
  { verb: 'pause', summary: 'Stops handing out work of a search until it is resumed' },
  { verb: 'resume', summary: 'Takes up a paused search where it stopped' },
] as const;

/** Hours and priority in an address, so that a search begins with them: none of it belongs to the specification. */
const scheduleQuery = z.object({
  hours: z
    .string()
    .regex(/^\d\d:\d\d-\d\d:\d\d$/)
    .optional()
    .describe('Write the hours in which it is worked on, for example 20:00-06:00; at any time if left out.'),
  zone: z
    .string()
    .max(64)
    .default('UTC')
    .describe('Write the time zone of the hours, for example Europe/Berlin.'),
  priority: scheduleSchema.shape.priority.default('usual'),
});

function scheduleIn({ hours, zone, priority }: z.output<typeof scheduleQuery>) {
  const [from, to] = hours?.split('-') ?? [];
  const asked = { hours: hours === undefined ? null : { zone, from, to }, priority };
  const faults = faultsOf(scheduleSchema, asked);
  if (faults.length > 0) throw new ProblemError(faults);
  return scheduleSchema.parse(asked);
}

/** POST and GET /searches, GET /searches/:id, and what changes the state of a search. */
export function searchRoutes(app: Server, { searches }: Parts): void {
  app.post(
    '/searches',
    {
      validatorCompiler: bodyAsSent,
      schema: {
        body: specificationSchema,
        summary: 'Starts a search',
        description: 'The body is the search specification itself. Answers as soon as the search is stored.',
        tags,
        headers: idempotencyHeader(
          'The same key answers with the search that it started first, and starts no second one.',
        ),
        querystring: scheduleQuery,
        response: { 202: z.object({ id: z.string() }), ...problemAnswers(409, 413, 415, 503) },
      },
    },
    async (request, reply) => {
      const idempotencyKey = request.headers['idempotency-key'];
      const { id } = await searches.submit(request.body, {
        schedule: scheduleIn(request.query),
        ...(idempotencyKey === undefined ? {} : { idempotencyKey }),
      });
      return reply.code(202).header('location', `/api/v1/searches/${id}`).send({ id });
    },
  );

  app.get(
    '/searches',
    {
      schema: {
        summary: 'Every search, the newest first',
        tags,
        response: { 200: z.array(searchViewSchema), ...problemAnswers() },
      },
    },
    () => searches.list(),
  );

  app.get(
    '/searches/:id',
    {
      schema: {
        summary: 'One search as it stands',
        tags,
        params: searchParameters,
        response: { 200: searchViewSchema, ...problemAnswers(404) },
      },
    },
    (request) => searches.view(request.params.id),
  );

  app.get(
    '/searches/:id/changes/:other',
    {
      schema: {
        summary: 'What a search asks, or was computed from, otherwise than another one',
        description:
          'Specification, data version, engine version and prices, in the words of the page; an empty list: both ask the same of the same data.',
        tags,
        params: searchParameters.extend({
          other: z.string().max(64).describe('The id of the search that it is compared with.'),
        }),
        response: { 200: searchDifferencesSchema, ...problemAnswers(404) },
      },
    },
    ({ params: { id, other } }) => changesSince(searches.view(other), searches.view(id)),
  );

  app.put(
    '/searches/:id/schedule',
    {
      schema: {
        summary: 'Says when a search is worked on: between which times of day, and before or behind others',
        tags,
        params: searchParameters,
        body: scheduleSchema,
        response: { 200: searchViewSchema, ...problemAnswers(404, 413, 415) },
      },
    },
    (request) => searches.schedule(request.params.id, request.body),
  );

  for (const { verb, summary } of changes) {
    app.post(
      `/searches/:id/${verb}`,
      {
        schema: {
          summary,
          tags,
          params: searchParameters,
          response: { 200: searchViewSchema, ...problemAnswers(404, 409) },
        },
      },
      (request) => searches[verb](request.params.id),
    );
  }
}
