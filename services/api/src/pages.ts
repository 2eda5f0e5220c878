import { existsSync } from 'node:fs';
import { join } from 'node:path';
import staticFiles from '@fastify/static';
import { fault } from '@tiegel/contract/terms';
import type { FastifyRequest } from 'fastify';
import type { Server } from './parts.ts';
import { pathOf } from './pathOf.ts';
import { answerFaults } from './problems/answerError.ts';

const notBuilt = `<!doctype html><html lang="en"><meta charset="utf-8"><title>Tiegel: pages not built</title>
<h1>The pages are not built</h1>
<p>The server runs and answers under /api/v1, but its pages were not built. Start it with
<code>npm start</code>, which builds them.</p></html>`;

/**
 * Serves the built pages, and index.html for every address that the pages themselves understand;
 * all other addresses are answered as a problem. Call it after all routes.
 */
export async function servePages(app: Server, folder: string): Promise<void> {
  const built = existsSync(join(folder, 'index.html'));
  if (built) {
    await app.register(staticFiles, {
      root: folder,
      dotfiles: 'ignore',
      wildcard: true,
      cacheControl: false,
      setHeaders: (reply, path) => reply.header('cache-control', lifeOf(path)),
    });
  }
  app.setNotFoundHandler((request, reply) => {
    if (!asksForPage(request)) {
      return answerFaults(reply, [
        fault('request/unknown-route', { method: request.method, path: pathOf(request.url) }),
      ]);
    }
    if (!built) return reply.code(503).type('text/html; charset=utf-8').send(notBuilt);
    return reply.sendFile('index.html');
  });
}

/** Vite names a file in assets by what it holds, so it never changes; all others are asked for anew. */
function lifeOf(path: string): string {
  return /[\\/]assets[\\/]/.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache';
}

function asksForPage({ method, url, headers }: FastifyRequest): boolean {
  const reads = method === 'GET' || method === 'HEAD';
  return reads && !url.startsWith('/api/') && (headers.accept ?? '').includes('text/html');
}
