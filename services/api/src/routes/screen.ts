import { type Fault, ProblemError } from '@tiegel/contract';
import { type Composition, compositionOf, factsFor, parseAlloy } from '@tiegel/elements';
import { screening } from '@tiegel/screening';
import { z } from 'zod';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const mostCompositions = 10_000;
const compositionSchema = z
  .union([z.string(), z.record(z.string(), z.number())])
  .describe('Write an alloy such as "Al7.69Co30.77Fe61.54", or at.% by symbol such as {"Co": 50, "Ni": 50}.');
type Sent = z.infer<typeof compositionSchema>;

/** POST /screen: every quantity of each alloy, in the order of the request. */
export function screenRoute(app: Server, { searches }: Parts): void {
  app.post(
    '/screen',
    {
      schema: {
        summary: 'Every quantity of each of up to 10,000 alloys',
        description:
          'Amounts may have any total. Costs are those of the price list in force, null where it lacks an element.',
        tags: ['screening'],
        body: z.strictObject({
          compositions: z
            .array(compositionSchema)
            .min(1)
            .max(mostCompositions)
            .describe(`Write 1 to ${mostCompositions} alloys as a list.`),
        }),
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
      const compositions = readAll(request.body.compositions);
      const symbols = new Set(compositions.flatMap((composition) => Object.keys(composition)));
      const values = screening(factsFor([...symbols], { prices: searches.prices() }));
      return compositions.map((composition) => ({ composition, quantities: values(composition) }));
    },
  );
}

/** All of them in at.%. Throws with the faults of every bad one. */
function readAll(sent: readonly Sent[]): Composition[] {
  const faults: Fault[] = [];
  const compositions = sent.flatMap((one, index) => {
    const pointer = `/compositions/${index}`;
    try {
      return [typeof one === 'string' ? parseAlloy(one, { pointer }) : compositionOf(one, { pointer })];
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      faults.push(...error.faults);
      return [];
    }
  });
  if (faults.length > 0) throw new ProblemError(faults);
  return compositions;
}
