import { limitsOn, ProblemError, type WeighingError, weighingErrorSchema } from '@tiegel/contract';
import { criterionVerdicts, weighingFaults, weighingSteps } from '@tiegel/insight';
import { quantities } from '@tiegel/screening';
import { z } from 'zod';
import { alloyOfBody, alloySchema, conditionsField } from '../alloys/alloySchema.ts';
import { keptFacts } from '../alloys/keptFacts.ts';
import { asAnswer } from '../asAnswer.ts';
import { inTurns } from '../inTurns.ts';
import type { Parts, Server } from '../parts.ts';
import { bodyAsSent } from '../problems/bodyAsSent.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const grams = z.number().positive().max(1e9);
const bodySchema = z
  .strictObject({
    composition: alloySchema,
    mass: grams.describe('Write the mass of the batch in g, for example 50.'),
    resolution: grams.describe('Write one step of the balance in g, for example 0.001.'),
    limits: limitsOn(quantities.map(({ id }) => id)).exactOptional(),
    conditions: conditionsField,
  })
  .describe('Write an object such as {"composition": "CoCrFeMnNi", "mass": 50, "resolution": 0.001}.');

/** POST /weighing: what the step of a balance leaves certain of an alloy. */
export function weighingRoute(app: Server, { searches }: Parts): void {
  app.post(
    '/weighing',
    {
      validatorCompiler: bodyAsSent,
      schema: {
        summary: 'What the step of a balance does to shares, quantities, limits and criteria',
        description:
          'Every mass is off by at most one step. An interval holds all that can come out; a limit or a ' +
          'criterion can flip where it does not hold alike throughout.',
        tags: ['screening'],
        body: bodySchema,
        response: { 200: weighingErrorSchema, ...problemAnswers(413, 415) },
      },
    },
    async (request) => {
      const { composition, mass, resolution, limits, conditions = {} } = read(request.body);
      const facts = keptFacts(Object.keys(composition), searches);
      const steps = weighingSteps(composition, {
        ...{ mass, resolution, facts, conditions },
        ...(limits === undefined ? {} : { limits }),
        verdicts: criterionVerdicts(facts, conditions),
      });
      const { verdicts, ...rest } = await inTurns(steps);
      return asAnswer<WeighingError>({ ...rest, criteria: verdicts });
    },
  );
}

function read(body: unknown) {
  const composition = alloyOfBody(bodySchema, body);
  const asked = bodySchema.parse(body);
  const faults = weighingFaults(composition, asked.mass, asked.resolution);
  if (faults.length > 0) throw new ProblemError(faults);
  return { ...asked, composition };
}
