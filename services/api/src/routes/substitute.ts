import { limitsOn, type Substitute, spaceOf, spaceWithDefaults, substitutesSchema } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { phaseOf, substitutes } from '@tiegel/insight';
import { quantities } from '@tiegel/screening';
import { z } from 'zod';
import { alloyOfBody, alloySchema, conditionsField } from '../alloys/alloySchema.ts';
import { keptFacts } from '../alloys/keptFacts.ts';
import { asAnswer } from '../asAnswer.ts';
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
        response: { 200: substitutesSchema, ...problemAnswers(413, 415) },
      },
    },
    (request) => {
      const { composition, ...asked } = read(request.body);
      const facts = keptFacts(symbols, searches);
      const items = substitutes(composition, { ...asked, facts, phase: (one) => phaseOf(one, facts) });
      return { items: asAnswer<Substitute[]>(items) };
    },
  );
}

function read(body: unknown) {
  const composition = alloyOfBody(bodySchema, body);
  const { space, ...asked } = bodySchema.parse(body);
  return { ...asked, ...(space ? { space: spaceWithDefaults(space) } : {}), composition };
}
