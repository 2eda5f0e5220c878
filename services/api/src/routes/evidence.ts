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
    () => asAnswer<Evidence>({ ...evidence(), ...onOwnMelts(parts), broughtIn: onBrought(parts) }),
  );
}

/** Alloys of the literature that were brought in may be among the published ones: they are told apart, and train nothing. */
function onBrought({ searches }: Parts) {
  return keptEvidence(searches.imports.observed(), 'alloys');
}

function onOwnMelts({ melts }: Parts) {
  const observed = melts.observed();
  const recalibration = keptRecalibration(observed);
  return {
    own: keptEvidence(observed, 'melts'),
    recalibration: { ...recalibration, words: recalibrationInWords(recalibration) },
  };
}
