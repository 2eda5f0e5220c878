import { chargeSheet } from '@tiegel/charge';
import {
  chargeSheetSummarySchema,
  type SavedChargeSheetView,
  savedChargeSheetSchema,
} from '@tiegel/contract';
import { longestName } from '@tiegel/contract/terms';
import { z } from 'zod';
import { asAnswer } from '../asAnswer.ts';
import { chargeFields, readCharge } from '../charges/chargeSchema.ts';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';
import { idempotencyHeader } from './idempotencyHeader.ts';

const path = '/charge-sheets';
const tags = ['charges'];

const bodySchema = z
  .strictObject({
    ...chargeFields,
    name: z
      .string()
      .max(longestName)
      .describe(`Write what the charge is for in at most ${longestName} characters.`)
      .exactOptional(),
  })
  .describe('Write an object such as {"composition": "CoCrFeMnNi", "mass": 50, "resolution": 0.001}.');

/** POST and GET /charge-sheets, GET /charge-sheets/:number: charge sheets under numbers that a melt refers to. */
export function chargeSheetRoutes(app: Server, { searches, chargeSheets }: Parts): void {
  app.post(
    path,
    {
      validatorCompiler: bodyAsSent,
      schema: {
        summary: 'Keeps a charge sheet under a number of its own',
        description:
          'Asked for as in POST /charge. What is kept is never changed, and no number is given twice.',
        tags,
        headers: idempotencyHeader(
          'The same key answers with the sheet that it kept first, and keeps no second one.',
        ),
        body: bodySchema,
        response: { 201: savedChargeSheetSchema, ...problemAnswers(413, 415) },
      },
    },
    async (request, reply) => {
      const [prices, pairs] = [searches.prices(), searches.pairs()];
      const sheet = chargeSheet(readCharge(bodySchema, request.body, searches));
      const { name = '', ...asked } = request.body as z.infer<typeof bodySchema>;
      const key = request.headers['idempotency-key'] ?? null;
      const by = request.holder?.name ?? null;
      const saved = chargeSheets.save(sheet, { name, by, request: asked, prices, pairs }, key);
      return reply
        .code(201)
        .header('location', `/api/v1${path}/${saved.number}`)
        .send(asAnswer<SavedChargeSheetView>(saved));
    },
  );

  app.get(
    path,
    {
      schema: {
        summary: 'Every charge sheet that was saved, the newest first',
        tags,
        response: { 200: z.array(chargeSheetSummarySchema), ...problemAnswers() },
      },
    },
    () => chargeSheets.list(),
  );

  app.get(
    `${path}/:number`,
    {
      schema: {
        summary: 'A charge sheet as it was saved',
        tags,
        params: z.object({ number: z.string().describe('Number of the sheet, such as C-0007.') }),
        response: { 200: savedChargeSheetSchema, ...problemAnswers(404) },
      },
    },
    (request) => asAnswer<SavedChargeSheetView>(chargeSheets.view(request.params.number)),
  );
}
