import { problem } from '@tiegel/contract/terms';
import type { FastifyInstance, FastifyRequest } from 'fastify';

/** The names by which a browser of this computer may call a server on loopback, with any port: a tunnel may change it. */
const ownName = /^(?:localhost|127(?:\.\d{1,3}){3}|\[::1\])(?::\d{1,5})?$/i;
const readingMethods = new Set(['GET', 'HEAD', 'OPTIONS']);

/**
 * HTTP/1.1 wants one of every request, and one alone: a proxy could look at the other. Node would answer without a
 * word. Throws request/unreadable.
 */
function refuseUnclearHost({ headers, raw }: FastifyRequest): void {
  if (headers.host === undefined && raw.httpVersion === '1.1')
    throw problem('request/unreadable', { what: 'it has no Host header' });
  if ((raw.headersDistinct?.host ?? []).length > 1)
    throw problem('request/unreadable', { what: 'it has more than one Host header' });
}

/**
 * A page of another site that resolves its own name to 127.0.0.1 could otherwise read everything
 * here; its requests carry its own name as Host. Throws access/foreign-host.
 */
function refuseForeignHost(request: FastifyRequest, hostNames: readonly string[]): void {
  const host = request.headers.host ?? '';
  const name = host.toLowerCase().replace(/:\d{1,5}$/, '');
  if (!ownName.test(host) && !hostNames.includes(name)) throw problem('access/foreign-host', { host });
}

/**
 * A browser states the page that makes it send; programs other than browsers state none.
 * Throws access/foreign-page for a change that another site's page asks for.
 */
function refuseForeignPage(request: FastifyRequest): void {
  if (readingMethods.has(request.method)) return;
  const { origin, host } = request.headers;
  const site = request.headers['sec-fetch-site'];
  const named = origin ?? (site === 'cross-site' || site === 'same-site' ? site : undefined);
  if (named === undefined) return;
  const page = URL.canParse(named) ? new URL(named) : null;
  // Without TLS here, a proxy may add it. With it, a page of the same name without is one that anybody on the way can write.
  const schemes = request.protocol === 'https' ? ['https:'] : ['http:', 'https:'];
  if (page === null || page.host !== host || !schemes.includes(page.protocol))
    throw problem('access/foreign-page', { origin: named });
}

/**
 * Looks at where every request comes from before it is answered. Who asks is found out by askToken.
 *
 * @param hostNames what the service may be called beside the names of this computer; null: anything,
 *   for an open network has names that nobody knows here unless somebody says them
 */
export function guardRequests(
  app: FastifyInstance,
  { hostNames }: { hostNames: readonly string[] | null },
): void {
  app.addHook('onRequest', async (request) => {
    refuseUnclearHost(request);
    if (hostNames !== null) refuseForeignHost(request, hostNames);
    refuseForeignPage(request);
  });
}
