import { evidence } from '@tiegel/insight';
import { z } from 'zod';
import type { Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const number = z.number();
const interval = z.tuple([number, number]);
const count = z.number().int().nullable();

const evidenceSchema = z
  .looseObject({
    criteria: z.array(
      z
        .looseObject({
          id: z.string(),
          name: z.string(),
          claim: z.string(),
          formula: z.string(),
          scope: z.string().nullable(),
          positiveClass: z.string(),
          n: count.describe('Alloys; null, as the counts, where the published alloys cannot test it'),
          tp: count,
          fp: count,
          fn: count,
          tn: count,
          balancedAccuracy: number.nullable(),
          interval: interval.nullable().describe('95 %, from resampling whole systems'),
          untested: z.string().nullable(),
        })
        .meta({ id: 'CriterionRecord' }),
    ),
    phaseEstimate: z.looseObject({
      validation: z.string(),
      n: z.number().int(),
      systems: z.number().int(),
      auc: number,
      brier: number,
      brierSkill: number,
      logLoss: number,
      calibrationError: number,
      fourClassAccuracy: number,
      baseRate: number,
      bestRule: z.object({ id: z.string(), name: z.string(), balancedAccuracy: number, interval }).nullable(),
      trust: z.string(),
    }),
    strength: z.array(
      z.looseObject({
        id: z.string(),
        what: z.string(),
        from: number.describe('K'),
        to: number.describe('K'),
        n: z.number().int(),
        medianError: number.describe('Median of |computed/measured − 1|'),
      }),
    ),
  })
  .meta({ id: 'Evidence' });

/** GET /evidence: how often criteria, phase estimate and strengths were right on the published alloys. */
export function evidenceRoute(app: Server): void {
  app.get(
    '/evidence',
    {
      schema: {
        summary: 'How often rules, phase estimate and strengths were right on published alloys',
        tags: ['data'],
        response: { 200: evidenceSchema, ...problemAnswers() },
      },
    },
    () => evidence() as unknown as z.input<typeof evidenceSchema>,
  );
}
