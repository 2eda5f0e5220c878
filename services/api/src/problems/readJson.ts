import { problem } from '@tiegel/contract/terms';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { textOfBody } from './textOfBody.ts';

/**
 * Parses bodies of type application/json, and says in the parser's words where one fails. A key
 * such as "__proto__" becomes a plain key, which the schemas refuse as any other unknown one.
 * Throws request/malformed-json, and what textOfBody does.
 */
export function readJson(app: FastifyInstance): void {
  app.addContentTypeParser(
    'application/json',
    { parseAs: 'buffer' },
    async ({ headers }: FastifyRequest, bytes: Buffer) => {
      const text = textOfBody(bytes, headers['content-type'], 'application/json');
      if (text === '') throw problem('request/malformed-json', { found: 'it is empty' });
      try {
        return JSON.parse(text);
      } catch (error) {
        throw problem('request/malformed-json', { found: (error as SyntaxError).message });
      }
    },
  );
}
