import { z } from 'zod';
import type { Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

/** GET /openapi.json: this interface, as OpenAPI 3.1. */
export function openapiRoute(app: Server): void {
  app.get(
    '/openapi.json',
    {
      schema: {
        summary: 'This interface, as OpenAPI 3.1',
        tags: ['service'],
        response: { 200: z.looseObject({ openapi: z.string() }), ...problemAnswers() },
      },
    },
    () => app.swagger() as { openapi: string },
  );
}
