import { isOver, type SearchView } from '@tiegel/contract';
import type { Searches } from '@tiegel/search';
import { z } from 'zod';
import { type EventStream, openEventStream, type Pace } from '../events/openEventStream.ts';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { searchParameters } from './searchParameters.ts';

const usualPace: Pace = { gapMs: 500, commentMs: 15_000 };

/**
 * GET /searches/:id/events: the search as it changes. Every event is the whole view, its id a
 * number that grows; a reader that comes back with the newest id gets only what is newer, and of
 * a finished search nothing (204, upon which browsers stop asking).
 */
export function eventRoutes(app: Server, { searches }: Parts, pace: Pace = usualPace): void {
  const open = new Set<EventStream>();
  // An open stream would keep the server from closing.
  app.addHook('preClose', async () => {
    for (const stream of open) stream.end();
  });

  app.get(
    '/searches/:id/events',
    {
      exposeHeadRoute: false,
      schema: {
        summary: 'The search as it changes, as server-sent events',
        description:
          'Each event is named "search"; its data is the whole search as JSON, its id grows by one with each change. ' +
          'At most two a second. The stream ends when the search is done, cancelled or failed.',
        tags: ['searches'],
        produces: ['text/event-stream'],
        params: searchParameters,
        headers: z.object({
          'last-event-id': z
            .string()
            .optional()
            .describe('The id of the last event that was read; only what is newer is sent.'),
        }),
        response: {
          200: z.string().describe('A stream of events'),
          204: z.null().describe('The search is finished, and its last event was read'),
          ...problemAnswers(404),
        },
      },
    },
    (request, reply) => {
      const { id } = request.params;
      const now = standing(searches, id);
      const read = lastRead(request.headers['last-event-id'], now.sequence);
      if (isOver(now.view.state) && now.sequence <= read) {
        reply.code(204).send(null);
        return;
      }

      // The reply is written by hand from here on: hooks and the error handler see no more of it.
      reply.hijack();
      const stream = openEventStream(reply.raw, pace, () => {
        stop();
        open.delete(stream);
      });
      open.add(stream);
      const stop = searches.watch(id, (view, sequence) => {
        if (sequence > read) stream.show({ id: sequence, name: 'search', data: view });
        if (isOver(view.state)) stream.end();
      });
    },
  );
}

/** The search as it stands, with the number of its last change. Throws search/unknown. */
function standing(searches: Searches, id: string): { view: SearchView; sequence: number } {
  const heard: { view: SearchView; sequence: number }[] = [];
  searches.watch(id, (view, sequence) => heard.push({ view, sequence }))();
  return heard[0]!;
}

/** The number in a Last-Event-ID; -1, which every number exceeds, where it cannot be one of this search. */
function lastRead(text: string | undefined, newest: number): number {
  const number = text !== undefined && /^\d{1,15}$/.test(text) ? Number(text) : -1;
  return number <= newest ? number : -1;
}
