import { faultsOf, ProblemError } from '@tiegel/contract';
import type { Composition } from '@tiegel/elements';
import { dataVersionOf } from '@tiegel/elements';
import { explain, withOwnAlloys } from '@tiegel/insight';
import { ownNeighbours } from '@tiegel/search/laboratory';
import { z } from 'zod';
import { alloySchema, conditionsField, readAlloy } from '../alloys/alloySchema.ts';
import { dossierFields } from '../alloys/dossierSchema.ts';
import { keptFacts } from '../alloys/keptFacts.ts';
import { keptRecalibration } from '../alloys/keptRecalibration.ts';
import { ownPhaseSchema } from '../alloys/recalibrationSchema.ts';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const bodySchema = z
  .strictObject({ composition: alloySchema, conditions: conditionsField })
  .describe('Write an object such as {"composition": "AlCoCrFeNi"}.');

const explanationSchema = z
  .object({
    composition: z.record(z.string(), z.number()),
    conditions: z.record(z.string(), z.number().nullable()).describe('Every one with its value; null: none'),
    dataVersion: z.string().describe('Of the data and prices in force'),
    quantities: z.record(z.string(), z.number().nullable()),
    ...dossierFields,
    own: ownPhaseSchema
      .nullable()
      .describe('The phase estimate recalibrated on your own melts, beside the published one'),
    affinity: z
      .object({
        temperature: z.number(),
        coordination: z.union([z.literal(8), z.literal(12)]),
        pairs: z.array(
          z.object({
            a: z.string(),
            b: z.string(),
            shortRangeOrder: z.number().describe('Warren–Cowley parameter: below 0 they seek each other'),
            weight: z.number(),
            limited: z.boolean(),
          }),
        ),
        validAbove: z.number().nullable(),
        words: z.string(),
        trust: z.string(),
      })
      .nullable(),
    paragraphs: z
      .array(
        z.object({
          subject: z.string(),
          heading: z.string(),
          text: z.string(),
          trust: z.string().nullable(),
          sources: z.array(z.string()),
        }),
      )
      .describe('The same for a person, in the order of reading'),
  })
  .meta({ id: 'Explanation' });

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
    (request) => {
      const { composition, conditions } = read(request.body);
      const facts = keptFacts(Object.keys(composition), searches);
      const told = explain(composition, facts, conditions, {
        recalibration: keptRecalibration(melts.observed()),
        pairs: searches.imports.pairs(),
      });
      return {
        ...withOwnAlloys(told, ownNeighbours(melts, searches.imports)),
        dataVersion: dataVersionOf(searches.prices(), [], searches.pairs()),
      } as z.input<typeof explanationSchema>;
    },
  );
}

function read(body: unknown): { composition: Composition; conditions: Record<string, number> } {
  const faults = faultsOf(bodySchema, body);
  const { composition: sent } = z
    .object({ composition: z.unknown() })
    .catch({ composition: null })
    .parse(body);
  const composition = readAlloy(sent, '/composition', faults);
  if (faults.length > 0 || composition === null) throw new ProblemError(faults);
  return { composition, conditions: bodySchema.parse(body).conditions ?? {} };
}
