import { distributionsRequest, distributionsSchema } from '@tiegel/contract';
import type { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { specificationSchema } from '../specificationSchema.ts';

/** A specification that need not say what is ranked. */
const unranked = (specificationSchema as unknown as z.ZodObject)
  .partial({ rank: true })
  .meta({ id: 'UnrankedSpecification' });

/** POST /distributions: how quantities lie over the grid of a search, and what each limit leaves. */
export function distributionsRoute(app: Server, { searches }: Parts): void {
  app.post(
    '/distributions',
    {
      validatorCompiler: bodyAsSent,
      schema: {
        body: distributionsRequest(unranked),
        summary: 'How quantities are distributed over the grid of a search, from a sample',
        description:
          'Each point of the grid is equally likely to be drawn; the same seed draws the same points. ' +
          'The values come in the order of the sample, so that a limit can be tried on them without asking again.',
        tags: ['searches'],
        response: { 200: distributionsSchema, ...problemAnswers(413, 415) },
      },
    },
    (request) => searches.distributions(request.body),
  );
}
