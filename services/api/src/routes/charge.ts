import { chargeSheet } from '@tiegel/charge';
import { type ChargeSheetView, chargeSheetSchema } from '@tiegel/contract';
import { asAnswer } from '../asAnswer.ts';
import { chargeBodySchema, readCharge } from '../charges/chargeSchema.ts';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

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
        response: { 200: chargeSheetSchema, ...problemAnswers(413, 415) },
      },
    },
    (request) => asAnswer<ChargeSheetView>(chargeSheet(readCharge(chargeBodySchema, request.body, searches))),
  );
}
