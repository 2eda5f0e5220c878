import { quantityById } from '@tiegel/screening';
import type { Paragraph, Told } from './paragraph.ts';
import { reportedClasses } from './reportedClasses.ts';
import { sourceInWords } from './sourceInWords.ts';

/** The estimate of the phases; that it learnt from the alloy itself is said where it did. */
export function phaseParagraph({ dossier: { phase, nearest }, pairSources }: Told): Paragraph {
  const seen =
    phase.singleSolution !== null && reportedClasses(nearest) !== null
      ? ' The estimate has seen this very alloy while it learnt.'
      : '';
  return {
    subject: 'phases',
    heading: 'Estimate of the phases',
    text: `${phase.words}${seen}`,
    trust: phase.trust,
    // The estimate reads the mixing enthalpies as they hold, and learnt from the published ones.
    sources: [sourceInWords(quantityById('singlePhaseEstimate').source), ...pairSources.own],
  };
}
