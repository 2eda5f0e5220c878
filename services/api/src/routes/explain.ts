import { type Explanation, explanationSchema } from '@tiegel/contract';
import type { Composition } from '@tiegel/elements';
import { dataVersionOf } from '@tiegel/elements';
import { explain, withOwnAlloys } from '@tiegel/insight';
import { ownNeighbours } from '@tiegel/search/laboratory';
import { z } from 'zod';
import { alloyOfBody, alloySchema, conditionsField } from '../alloys/alloySchema.ts';
import { keptFacts } from '../alloys/keptFacts.ts';
import { keptRecalibration } from '../alloys/keptRecalibration.ts';
import { asAnswer } from '../asAnswer.ts';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const bodySchema = z
  .strictObject({ composition: alloySchema, conditions: conditionsField })
  .describe('Write an object such as {"composition": "AlCoCrFeNi"}.');

/** POST /explain: what is published of an alloy and what the models say, as numbers and in words. */
export function explainRoute(app: Server, { searches, melts }: Parts): void {
  app.post(
    '/explain',
    {
      validatorCompiler: bodyAsSent,
      schema: {
        summary: 'What is published of an alloy and what the models say, as numbers and in words',
        tags: ['screening'],
        body: bodySchema,
        response: { 200: explanationSchema, ...problemAnswers(413, 415) },
      },
    },
    async (request) => {
      const { composition, conditions } = read(request.body);
      const recalibration = await keptRecalibration(melts.observed());
      const facts = keptFacts(Object.keys(composition), searches);
      const told = explain(composition, facts, conditions, {
        recalibration,
        pairs: searches.imports.pairs(),
      });
      return asAnswer<Explanation>({
        ...withOwnAlloys(told, ownNeighbours(melts, searches.imports)),
        dataVersion: dataVersionOf(searches.prices(), [], searches.pairs()),
      });
    },
  );
}

function read(body: unknown): { composition: Composition; conditions: Record<string, number> } {
  const composition = alloyOfBody(bodySchema, body);
  return { composition, conditions: bodySchema.parse(body).conditions ?? {} };
}
