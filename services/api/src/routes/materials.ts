import { materialsSchema } from '@tiegel/contract';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

/** GET /materials: raw materials that a charge can be made of, own ones first. */
export function materialRoute(app: Server, { searches }: Parts): void {
  app.get(
    '/materials',
    {
      schema: {
        summary: 'Raw materials in force: those that were brought in, then every element pure',
        tags: ['data'],
        response: { 200: materialsSchema, ...problemAnswers() },
      },
    },
    () => ({
      items: searches.imports
        .materials()
        .map((one) => ({ ...one, contains: { ...one.contains }, own: one.import !== null })),
    }),
  );
}
