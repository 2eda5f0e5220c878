import { mayAct, problem } from '@tiegel/contract/terms';
import type { Holder, Tokens } from '@tiegel/search/laboratory';
import type { FastifyInstance } from 'fastify';
import { answersUnderWay } from './answersUnderWay.ts';
import { neededRole } from './neededRole.ts';
import { sentToken } from './sentToken.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** Who asks; null where nobody is asked, or no token in force was sent. */
    holder: Holder | null;
  }
}

/** How long an answer may go on after its token was withdrawn. */
const lookEveryMs = 2000;

/**
 * Finds out who asks, before anything else is read of a request, and refuses who may not: access/no-token,
 * access/unknown-token, access/role. The database is asked each time, so that a token ends when it is withdrawn,
 * and every few seconds for answers that go on. No answer is kept on its way or in a browser, where another may sit next.
 *
 * @param tokens null: nobody is asked
 */
export function askToken(app: FastifyInstance, tokens: Pick<Tokens, 'holderOf'> | null): void {
  app.decorateRequest('holder', null);
  if (tokens === null) return;
  const underWay = answersUnderWay((token) => tokens.holderOf(token) !== null);
  const looking = setInterval(() => {
    try {
      underWay.endWithdrawn();
    } catch (error) {
      app.log.error({ err: error }, 'whether tokens are in force cannot be told');
    }
  }, lookEveryMs).unref();
  app.addHook('onClose', async () => clearInterval(looking));
  app.addHook('onSend', async (request, reply) => {
    if (request.routeOptions.url?.startsWith('/api/')) reply.header('cache-control', 'no-store');
  });
  app.addHook('onRequest', async (request, reply) => {
    const token = sentToken(request);
    request.holder = token === null ? null : tokens.holderOf(token);
    const needed = neededRole(request.method, request.routeOptions.url);
    if (needed === null) return;
    if (token === null) throw problem('access/no-token');
    if (request.holder === null) throw problem('access/unknown-token');
    const { name, role } = request.holder;
    if (!mayAct(role, needed)) throw problem('access/role', { name, role, needed });
    underWay.add(token, reply.raw);
  });
}
