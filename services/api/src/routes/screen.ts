import { amountsSchema, dossierSchema, faultsOf, ProblemError, valuesSchema } from '@tiegel/contract';
import { type Composition, factsFor } from '@tiegel/elements';
import { dossierOf, withOwnNeighbours } from '@tiegel/insight';
import { quantities, screening } from '@tiegel/screening';
import { ownNeighbours } from '@tiegel/search/laboratory';
import { z } from 'zod';
import { alloySchema, conditionsField, readAlloy } from '../alloys/alloySchema.ts';
import { asAnswer } from '../asAnswer.ts';
import { jsonList } from '../jsonList.ts';
import type { Parts, Server } from '../parts.ts';
import { places } from '../places.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const mostCompositions = 10_000;
/** So few take half a second and are never refused. */
const fewCompositions = 200;
/** Requests of more that are worked on at once: one thread has to do them all. */
const mostAtOnce = 2;

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
    composition: amountsSchema,
    quantities: valuesSchema,
    ...dossierSchema.shape,
  })
  .meta({ id: 'ScreenedAlloy' });

/** Whatever is in the list, so that one bad entry does not hide another. */
const listed = z.object({ compositions: z.array(z.unknown()).max(mostCompositions) });

/** POST /screen: everything that is said of each alloy, in the order of the request. */
export function screenRoute(app: Server, { searches, melts }: Parts): void {
  const takePlace = places(mostAtOnce, 'screenings of many alloys');
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
        response: { 200: z.array(screenedSchema), ...problemAnswers(413, 415, 503) },
      },
    },
    async (request, reply) => {
      const { compositions, conditions } = readAll(request.body);
      const symbols = new Set(compositions.flatMap((composition) => Object.keys(composition)));
      const facts = factsFor([...symbols], { prices: searches.prices(), pairs: searches.pairs() });
      const own = ownNeighbours(melts, searches.imports);
      const values = screening(facts, quantities, conditions);
      function* screened(): Generator<string> {
        for (const composition of compositions) {
          const dossier = dossierOf(composition, facts, conditions);
          const alloy = asAnswer<z.output<typeof screenedSchema>>({
            composition,
            quantities: values(composition),
            ...dossier,
            nearest: withOwnNeighbours(composition, dossier.nearest, own),
          });
          yield JSON.stringify(screenedSchema.encode(alloy));
        }
      }
      const leave = compositions.length > fewCompositions ? takePlace() : () => {};
      const list = jsonList(screened());
      list.once('close', leave);
      return reply.type('application/json; charset=utf-8').send(list as never);
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
