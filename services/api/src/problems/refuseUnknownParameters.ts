import type { FastifySchema } from 'fastify';
import { z } from 'zod';
import type { Server } from '../parts.ts';

const none = z.object({});

/**
 * Makes every documented route that is added after it take the parameters of its own query string
 * and no others, none where it has none: a misspelt one would otherwise count as left out, and a
 * search would start at another time than was meant. Such a request is answered
 * request/unknown-key, with the nearest name.
 */
export function refuseUnknownParameters(app: Server): void {
  app.addHook('onRoute', (route) => {
    const { querystring = none, ...schema } = (route.schema ?? {}) as FastifySchema & {
      querystring?: z.ZodObject;
    };
    // Pages and answers to wrong methods are no part of the interface.
    if (schema.hide) return;
    route.schema = { ...schema, querystring: querystring.strict() };
  });
}
