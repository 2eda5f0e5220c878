import type { Server } from '../parts.ts';

/** Routes whose body is CSV, as a text, and nothing else. */
export function withCsvBody(app: Server, add: (routes: Server) => void): void {
  app.register(async (csv) => {
    csv.removeAllContentTypeParsers();
    csv.addContentTypeParser('text/csv', { parseAs: 'string' }, (_request, text, done) => done(null, text));
    add(csv as Server);
  });
}
