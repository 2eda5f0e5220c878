import { faultsOf, limitsOn, ProblemError, spaceOf, spaceWithDefaults } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { phaseOf, substitutes } from '@tiegel/insight';
import { quantities } from '@tiegel/screening';
import { z } from 'zod';
import { alloySchema, conditionsField, readAlloy } from '../alloys/alloySchema.ts';
import { demixingSchema, phaseSchema } from '../alloys/dossierSchema.ts';
import { keptFacts } from '../alloys/keptFacts.ts';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const symbol = z.string().describe('Write the symbol of an element, for example "Co".');
const bodySchema = z
  .strictObject({
    composition: alloySchema,
    replace: symbol,
    with: z
      .array(symbol)
      .min(1)
      .max(symbols.length)
      .describe('Write the elements to come instead as a list; left out, every other is tried.')
      .exactOptional(),
    limits: limitsOn(quantities.map(({ id }) => id)).exactOptional(),
    space: spaceOf(symbols).exactOptional(),
    conditions: conditionsField,
  })
  .describe('Write an object such as {"composition": "CoCrFeMnNi", "replace": "Co"}.');

const amounts = z.record(z.string(), z.number());
const values = z.record(z.string(), z.number().nullable());
const answerSchema = z.object({
  items: z
    .array(
      z
        .object({
          replaced: amounts,
          by: amounts,
          composition: amounts,
          quantities: values,
          changes: values.describe('Value minus that of the alloy; null where either has none'),
          phase: phaseSchema.nullable(),
          demixing: demixingSchema.nullable(),
          cost: z.number().nullable().describe('Currency of the price list in force, per kg'),
          limits: z
            .array(z.boolean().nullable())
            .describe('In the order of the limits: kept, not kept, no value'),
          outsideSpace: z
            .array(z.string())
            .describe('What of the space it breaks, in words; empty where it lies in it or none was sent'),
          score: z.number().nullable().describe('Unlikeness to the alloy, from 0 to 1'),
        })
        .meta({ id: 'Substitute' }),
    )
    .describe('Those that keep all limits and lie in the space first, the most alike first'),
});

/** POST /substitute: an element of an alloy replaced by others, for its whole share and for half of it. */
export function substituteRoute(app: Server, { searches }: Parts): void {
  app.post(
    '/substitute',
    {
      validatorCompiler: bodyAsSent,
      schema: {
        summary: 'An element of an alloy replaced by every other, the most alike first',
        tags: ['screening'],
        body: bodySchema,
        response: { 200: answerSchema, ...problemAnswers(413, 415) },
      },
    },
    (request) => {
      const { composition, ...asked } = read(request.body);
      const facts = keptFacts(symbols, searches);
      const items = substitutes(composition, { ...asked, facts, phase: (one) => phaseOf(one, facts) });
      return { items } as z.input<typeof answerSchema>;
    },
  );
}

function read(body: unknown) {
  const faults = faultsOf(bodySchema, body);
  const { composition: sent } = z
    .object({ composition: z.unknown() })
    .catch({ composition: null })
    .parse(body);
  const composition = readAlloy(sent, '/composition', faults);
  if (faults.length > 0 || composition === null) throw new ProblemError(faults);
  const { space, ...asked } = bodySchema.parse(body);
  return { ...asked, ...(space ? { space: spaceWithDefaults(space) } : {}), composition };
}
