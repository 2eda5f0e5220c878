import { problem } from '@tiegel/contract/terms';
import type { FastifyInstance } from 'fastify';

/**
 * Parses bodies of type application/json, and says in the parser's words where one fails. A key
 * such as "__proto__" becomes a plain key, which the schemas refuse as any other unknown one.
 * Throws request/malformed-json.
 */
export function readJson(app: FastifyInstance): void {
  app.addContentTypeParser(
    'application/json',
    { parseAs: 'string' },
    async (_request: unknown, text: string) => {
      if (text === '') throw problem('request/malformed-json', { found: 'it is empty' });
      try {
        return JSON.parse(text);
      } catch (error) {
        throw problem('request/malformed-json', { found: (error as SyntaxError).message });
      }
    },
  );
}
