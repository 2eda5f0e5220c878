import { sources } from '@tiegel/elements';
import { publishedSource } from '@tiegel/elements/publishedAlloys';
import type { Paragraph, Told } from './paragraph.ts';
import { reportedClasses } from './reportedClasses.ts';

/** The estimate of the phases; that it learnt from the alloy itself is said where it did. */
export function phaseParagraph({ dossier: { phase, nearest } }: Told): Paragraph {
  const seen =
    phase.singleSolution !== null && reportedClasses(nearest) !== null
      ? ' The estimate has seen this very alloy while it learnt.'
      : '';
  return {
    subject: 'phases',
    heading: 'Estimate of the phases',
    text: `${phase.words}${seen}`,
    trust: phase.trust,
    sources: [`Logistic model of this project. ${sources[publishedSource].text}`],
  };
}
