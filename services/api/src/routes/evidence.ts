import { evidence, ownEvidence, recalibrationInWords } from '@tiegel/insight';
import { z } from 'zod';
import { keptRecalibration } from '../alloys/keptRecalibration.ts';
import { recalibrationSchema } from '../alloys/recalibrationSchema.ts';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

const number = z.number();
const interval = z.tuple([number, number]);
const count = z.number().int().nullable();

const score = number.nullable();

const ownSchema = z
  .object({
    melts: z.number().int().describe('Melts of your own whose phases were observed'),
    systems: z.number().int(),
    criteria: z.array(
      z.object({
        id: z.string(),
        ...{ n: z.number().int(), tp: z.number().int(), fp: z.number().int() },
        ...{ fn: z.number().int(), tn: z.number().int() },
        balancedAccuracy: score.describe('null: not both a melt of the class and one that is not'),
        interval: interval.nullable().describe('null: too few melts'),
      }),
    ),
    phaseEstimate: z.object({
      n: z.number().int(),
      withoutBasis: z.number().int(),
      ...{ baseRate: score, auc: score, interval: interval.nullable() },
      ...{ brier: score, logLoss: score, fourClassAccuracy: score },
    }),
    trust: z.string(),
  })
  .meta({ id: 'OwnEvidence' });

const evidenceSchema = z
  .looseObject({
    broughtIn: ownSchema
      .nullable()
      .describe(
        'The same on alloys that were brought in with phases (`melts` counts them); never trained on; null: none',
      ),
    own: ownSchema
      .nullable()
      .describe('The same on the melts of your own; null where none has observed phases'),
    recalibration: z
      .object({ ...recalibrationSchema.shape, words: z.string() })
      .describe('What your own melts make of the phase estimate, or how many are missing'),
    criteria: z.array(
      z
        .looseObject({
          id: z.string(),
          name: z.string(),
          claim: z.string(),
          formula: z.string(),
          scope: z.string().nullable(),
          positiveClass: z.string(),
          predictsSecondPhase: z
            .boolean()
            .describe('Whether that class is a phase beside the solution: to meet the rule is bad news'),
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

/** GET /evidence: how often criteria, phase estimate and strengths were right on the published alloys, and on the melts of one's own. */
export function evidenceRoute(app: Server, parts: Parts): void {
  app.get(
    '/evidence',
    {
      schema: {
        summary: 'How often rules, phase estimate and strengths were right on published alloys and own melts',
        tags: ['data'],
        response: { 200: evidenceSchema, ...problemAnswers() },
      },
    },
    () =>
      ({ ...evidence(), ...onOwnMelts(parts), broughtIn: onBrought(parts) }) as unknown as z.input<
        typeof evidenceSchema
      >,
  );
}

/** Alloys of the literature that were brought in may be among the published ones: they are told apart, and train nothing. */
function onBrought({ searches }: Parts) {
  const observed = searches.imports.observed();
  return observed.length === 0 ? null : ownEvidence(observed, 'alloys');
}

function onOwnMelts({ melts }: Parts) {
  const observed = melts.observed();
  const recalibration = keptRecalibration(observed);
  return {
    own: observed.length === 0 ? null : ownEvidence(observed),
    recalibration: { ...recalibration, words: recalibrationInWords(recalibration) },
  };
}
