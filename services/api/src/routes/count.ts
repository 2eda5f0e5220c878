import { sizeSchema } from '@tiegel/contract';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { specificationBody } from './specificationBody.ts';

/** POST /count: how large a search is, counted exactly, before it runs. */
export function countRoute(app: Server, { searches }: Parts): void {
  app.post(
    '/count',
    {
      ...specificationBody,
      schema: {
        ...specificationBody.schema,
        summary: 'Counts the systems and grid points of a search, exactly, without running it',
        description: 'The body is the search specification itself.',
        tags: ['searches'],
        response: { 200: sizeSchema, ...problemAnswers(400, 413, 415) },
      },
    },
    (request) => searches.size(request.body),
  );
}
