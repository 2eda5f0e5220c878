import type { FastifyRequest } from 'fastify';
import type { Server } from '../parts.ts';
import { textOfBody } from '../problems/textOfBody.ts';

/** Routes whose body is CSV, as a text, and nothing else. */
export function withCsvBody(app: Server, add: (routes: Server) => void): void {
  app.register(async (csv) => {
    csv.removeAllContentTypeParsers();
    csv.addContentTypeParser(
      'text/csv',
      { parseAs: 'buffer' },
      async ({ headers }: FastifyRequest, bytes: Buffer) =>
        textOfBody(bytes, headers['content-type'], 'text/csv'),
    );
    add(csv as Server);
  });
}
