import { chargeSheet } from '@tiegel/charge';
import { z } from 'zod';
import { chargeAnswerFields, chargeBodySchema, readCharge } from '../charges/chargeSchema.ts';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const answerSchema = z.object(chargeAnswerFields).meta({ id: 'ChargeSheet' });

/** POST /charge: what to weigh for a batch. Nothing is kept. */
export function chargeRoute(app: Server, { searches }: Parts): void {
  app.post(
    '/charge',
    {
      validatorCompiler: bodyAsSent,
      schema: {
        summary: 'What to weigh for a batch of an alloy, in which order, with which cautions',
        description:
          'The cheapest set of materials that gives the target after the losses, rounded to the balance. ' +
          'Nothing is kept: POST /charge-sheets keeps it under a number.',
        tags: ['charges'],
        body: chargeBodySchema,
        response: { 200: answerSchema, ...problemAnswers(413, 415) },
      },
    },
    (request) =>
      chargeSheet(readCharge(chargeBodySchema, request.body, searches)) as z.input<typeof answerSchema>,
  );
}
