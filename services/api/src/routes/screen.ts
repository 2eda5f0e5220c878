import { setImmediate } from 'node:timers/promises';
import { faultsOf, ProblemError } from '@tiegel/contract';
import { type Composition, factsFor } from '@tiegel/elements';
import { dossierOf, withOwnNeighbours } from '@tiegel/insight';
import { quantities, screening } from '@tiegel/screening';
import { ownNeighbours } from '@tiegel/search/laboratory';
import { z } from 'zod';
import { alloySchema, conditionsField, readAlloy } from '../alloys/alloySchema.ts';
import { dossierFields } from '../alloys/dossierSchema.ts';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const mostCompositions = 10_000;
/** Alloys between two pauses, in which others are answered: some 50 ms. */
const batchLength = 20;

const bodySchema = z
  .strictObject({
    compositions: z
      .array(alloySchema)
      .min(1)
      .max(mostCompositions)
      .describe(`Write 1 to ${mostCompositions} alloys as a list.`),
    conditions: conditionsField,
  })
  .describe('Write an object such as {"compositions": ["AlCoCrFeNi"]}.');

const screenedSchema = z
  .object({
    composition: z.record(z.string(), z.number()),
    quantities: z.record(z.string(), z.number().nullable()),
    ...dossierFields,
  })
  .meta({ id: 'ScreenedAlloy' });

/** Whatever is in the list, so that one bad entry does not hide another. */
const listed = z.object({ compositions: z.array(z.unknown()).max(mostCompositions) });

/** POST /screen: everything that is said of each alloy, in the order of the request. */
export function screenRoute(app: Server, { searches, melts }: Parts): void {
  app.post(
    '/screen',
    {
      validatorCompiler: bodyAsSent,
      schema: {
        summary: 'Every quantity of each of up to 10,000 alloys, with criteria, phases and what competes',
        description:
          'Amounts may have any total. Costs are those of the price list in force, null where it lacks an element. ' +
          'A thousand alloys take some seconds.',
        tags: ['screening'],
        body: bodySchema,
        response: { 200: z.array(screenedSchema), ...problemAnswers(413, 415) },
      },
    },
    async (request) => {
      const { compositions, conditions } = readAll(request.body);
      const symbols = new Set(compositions.flatMap((composition) => Object.keys(composition)));
      const facts = factsFor([...symbols], { prices: searches.prices(), pairs: searches.pairs() });
      const own = ownNeighbours(melts, searches.imports);
      const values = screening(facts, quantities, conditions);
      const screened: z.input<typeof screenedSchema>[] = [];
      for (const [place, composition] of compositions.entries()) {
        if (place % batchLength === 0) await setImmediate();
        const dossier = dossierOf(composition, facts, conditions);
        screened.push({
          composition,
          quantities: values(composition),
          ...dossier,
          nearest: withOwnNeighbours(composition, dossier.nearest, own),
        } as (typeof screened)[number]);
      }
      return screened;
    },
  );
}

/** All of them in at.%. Throws with every fault: those of the form, and those of each alloy that has the form. */
function readAll(body: unknown): { compositions: Composition[]; conditions: Record<string, number> } {
  const faults = faultsOf(bodySchema, body);
  const { compositions: sent } = listed.catch({ compositions: [] }).parse(body);
  const compositions = sent
    .map((one, index) => readAlloy(one, `/compositions/${index}`, faults))
    .filter((one) => one !== null);

  if (faults.length > 0) throw new ProblemError(faults);
  return { compositions, conditions: bodySchema.parse(body).conditions ?? {} };
}
