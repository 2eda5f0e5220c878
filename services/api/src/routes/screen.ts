import { type Fault, faultsOf, ProblemError } from '@tiegel/contract';
import { type Composition, compositionOf, factsFor, parseAlloy } from '@tiegel/elements';
import { screening } from '@tiegel/screening';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const mostCompositions = 10_000;
const compositionSchema = z
  .union([z.string(), z.record(z.string(), z.number())])
  .describe('Write an alloy such as "Al7.69Co30.77Fe61.54", or at.% by symbol such as {"Co": 50, "Ni": 50}.');
const bodySchema = z
  .strictObject({
    compositions: z
      .array(compositionSchema)
      .min(1)
      .max(mostCompositions)
      .describe(`Write 1 to ${mostCompositions} alloys as a list.`),
  })
  .describe('Write an object such as {"compositions": ["AlCoCrFeNi"]}.');

/** Whatever is in the list, so that one bad entry does not hide another. */
const listed = z.object({ compositions: z.array(z.unknown()).max(mostCompositions) });

/** POST /screen: every quantity of each alloy, in the order of the request. */
export function screenRoute(app: Server, { searches }: Parts): void {
  app.post(
    '/screen',
    {
      validatorCompiler: bodyAsSent,
      schema: {
        summary: 'Every quantity of each of up to 10,000 alloys',
        description:
          'Amounts may have any total. Costs are those of the price list in force, null where it lacks an element.',
        tags: ['screening'],
        body: bodySchema,
        response: {
          200: z.array(
            z.object({
              composition: z.record(z.string(), z.number()),
              quantities: z.record(z.string(), z.number().nullable()),
            }),
          ),
          ...problemAnswers(400, 413, 415),
        },
      },
    },
    (request) => {
      const compositions = readAll(request.body);
      const symbols = new Set(compositions.flatMap((composition) => Object.keys(composition)));
      const values = screening(factsFor([...symbols], { prices: searches.prices() }));
      return compositions.map((composition) => ({ composition, quantities: values(composition) }));
    },
  );
}

/** All of them in at.%. Throws with every fault: those of the form, and those of each alloy that has the form. */
function readAll(body: unknown): Composition[] {
  const faults = faultsOf(bodySchema, body);
  const { compositions: sent } = listed.catch({ compositions: [] }).parse(body);
  const compositions = sent.flatMap((one, index) => {
    const alloy = compositionSchema.safeParse(one);
    return alloy.success ? readOne(alloy.data, `/compositions/${index}`, faults) : [];
  });
  if (faults.length > 0) throw new ProblemError(faults);
  return compositions;
}

function readOne(sent: z.infer<typeof compositionSchema>, pointer: string, faults: Fault[]): Composition[] {
  try {
    return [typeof sent === 'string' ? parseAlloy(sent, { pointer }) : compositionOf(sent, { pointer })];
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    faults.push(...error.faults);
    return [];
  }
}
