import { type Evidence, evidenceSchema } from '@tiegel/contract';
import { evidence, recalibrationInWords } from '@tiegel/insight';
import { keptEvidence } from '../alloys/keptEvidence.ts';
import { keptRecalibration } from '../alloys/keptRecalibration.ts';
import { asAnswer } from '../asAnswer.ts';
import type { Parts, Server } from '../parts.ts';
import { problemAnswers } from '../problems/problemAnswers.ts';

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
    async () => {
      const broughtIn = await onBrought(parts);
      return asAnswer<Evidence>({ ...evidence(), ...(await onOwnMelts(parts)), broughtIn });
    },
  );
}

/** Alloys of the literature that were brought in may be among the published ones: they are told apart, and train nothing. */
function onBrought({ searches }: Parts) {
  return keptEvidence(searches.imports.observed(), 'alloys');
}

async function onOwnMelts({ melts }: Parts) {
  const observed = melts.observed();
  const recalibration = await keptRecalibration(observed);
  return {
    own: await keptEvidence(observed, 'melts'),
    recalibration: { ...recalibration, words: recalibrationInWords(recalibration) },
  };
}
