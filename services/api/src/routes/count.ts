import { sizeSchema } from '@tiegel/contract';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { specificationSchema } from '../specificationSchema.ts';

/** POST /count: how large a search is, counted exactly, before it runs. */
export function countRoute(app: Server, { searches }: Parts): void {
  app.post(
    '/count',
    {
      validatorCompiler: bodyAsSent,
      schema: {
        body: specificationSchema,
        summary: 'Counts the systems and grid points of a search, exactly, without running it',
        description: 'The body is the search specification itself.',
        tags: ['searches'],
        response: { 200: sizeSchema, ...problemAnswers(413, 415) },
      },
    },
    (request) => searches.size(request.body),
  );
}
