import { problem } from '@tiegel/contract/terms';
import type { HTTPMethods } from 'fastify';
import type { Server } from './parts.ts';
import { pathOf } from './pathOf.ts';

const methods: readonly HTTPMethods[] = ['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS', 'TRACE'];

/**
 * Answers an address that exists but takes other methods with 405 and the ones that it takes.
 * Call it before the routes; it adds its own when all of them stand.
 */
export function refuseOtherMethods(app: Server): () => void {
  const taken = new Map<string, Set<string>>();
  app.addHook('onRoute', ({ url, method }) => {
    const known = taken.get(url) ?? new Set();
    for (const one of [method].flat()) known.add(one);
    taken.set(url, known);
  });
  return () => {
    for (const [url, known] of [...taken]) {
      const allowed = [...known].sort().join(', ');
      app.route({
        url,
        method: methods.filter((one) => !known.has(one)),
        schema: { hide: true },
        handler: (request, reply) => {
          reply.header('allow', allowed);
          throw problem('request/wrong-method', {
            method: request.method,
            path: pathOf(request.url),
            allowed,
          });
        },
      });
    }
  };
}
