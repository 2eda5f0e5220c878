import { dataVersionsSchema } from '@tiegel/contract';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

/** GET /data-versions: which searches used which data. */
export function dataVersionRoute(app: Server, { searches }: Parts): void {
  app.get(
    '/data-versions',
    {
      schema: {
        summary: 'Which searches used which data, the data in force first',
        tags: ['data'],
        response: { 200: dataVersionsSchema, ...problemAnswers() },
      },
    },
    () => searches.imports.dataVersions(),
  );
}
