import { problem } from '@tiegel/contract/terms';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { textOfBody } from './textOfBody.ts';

/**
 * Parses bodies of type application/json, and says in the parser's words where one fails. A key
 * such as "__proto__" becomes a plain key, which the schemas refuse as any other unknown one.
 * `parse` throws a SyntaxError for what is no JSON. Throws request/malformed-json, and what textOfBody does.
 */
export function readJson(app: FastifyInstance, parse: (text: string) => unknown = JSON.parse): void {
  app.addContentTypeParser(
    'application/json',
    { parseAs: 'buffer' },
    async ({ headers }: FastifyRequest, bytes: Buffer) => {
      const text = textOfBody(bytes, headers['content-type'], 'application/json');
      if (text === '') throw problem('request/malformed-json', { found: 'it is empty' });
      try {
        return parse(text);
      } catch (error) {
        if (!(error instanceof SyntaxError)) throw error;
        throw problem('request/malformed-json', { found: error.message });
      }
    },
  );
}
