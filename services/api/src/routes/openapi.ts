import type { Server } from '../parts.ts';

/** GET /openapi.json: this interface, as OpenAPI 3.1. */
export function openapiRoute(app: Server): void {
  app.get(
    '/openapi.json',
    { schema: { summary: 'This interface, as OpenAPI 3.1', tags: ['service'] } },
    (_, reply) => reply.type('application/json').serializer(JSON.stringify).send(app.swagger()),
  );
}
