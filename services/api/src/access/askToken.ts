import { mayAct, problem } from '@tiegel/contract/terms';
import type { Holder, Tokens } from '@tiegel/search/laboratory';
import type { FastifyInstance } from 'fastify';
import { neededRole } from './neededRole.ts';
import { sentToken } from './sentToken.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** Who asks; null where nobody is asked, or no token in force was sent. */
    holder: Holder | null;
  }
}

/**
 * Finds out who asks, before anything else is read of a request, and refuses who may not: access/no-token,
 * access/unknown-token, access/role. The database is asked each time, so that a token ends when it is withdrawn.
 *
 * @param tokens null: nobody is asked
 */
export function askToken(app: FastifyInstance, tokens: Pick<Tokens, 'holderOf'> | null): void {
  app.decorateRequest('holder', null);
  if (tokens === null) return;
  app.addHook('onRequest', async (request) => {
    const token = sentToken(request);
    request.holder = token === null ? null : tokens.holderOf(token);
    const needed = neededRole(request.method, request.routeOptions.url);
    if (needed === null) return;
    if (request.holder === null) throw problem(token === null ? 'access/no-token' : 'access/unknown-token');
    const { name, role } = request.holder;
    if (!mayAct(role, needed)) throw problem('access/role', { name, role, needed });
  });
}
