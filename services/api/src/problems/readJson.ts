import { problem } from '@tiegel/contract';
import type { FastifyInstance } from 'fastify';

/** Parses JSON; says in the parser's words where it fails. Throws request/malformed-json. */
export function readJson(app: FastifyInstance): void {
  const parse = app.getDefaultJsonParser('error', 'error');
  app.addContentTypeParser('application/json', { parseAs: 'string' }, (request, text, done) => {
    if (text.length === 0)
      return done(problem('request/malformed-json', { found: 'it is empty' }), undefined);
    parse(request, text as string, (error, value) =>
      error === null
        ? done(null, value)
        : done(problem('request/malformed-json', { found: whyUnparsable(text as string) }), undefined),
    );
  });
}

function whyUnparsable(text: string): string {
  try {
    JSON.parse(text);
    // The parser of the framework also refuses keys that could change the prototype of an object.
    return 'it holds a key such as "__proto__"';
  } catch (error) {
    return (error as SyntaxError).message;
  }
}
