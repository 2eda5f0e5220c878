import { phaseClassOf } from '@tiegel/elements/publishedAlloys';
import { phaseClasses, type TrainingAlloy } from './trainingAlloys.ts';

/**
 * How often a report is taken for noise. Two publications on one composition disagree in 32 % of
 * cases, so a single one misses in some 16 %; without this the estimate is too sure of itself
 * where it is most sure (it says 0.96 where 0.71 happens).
 */
const NOISE = 0.16;

/**
 * What an alloy's publications say of each class, as weights for fitting. Their shares count, not
 * the majority alone; and twenty publications weigh more than one, by the square root of their
 * number, since they share makers and methods.
 */
export function reportedEvidence(alloys: readonly TrainingAlloy[]): number[][] {
  const frequencies = phaseClasses.map(
    (_, k) => alloys.filter(({ phaseClass }) => phaseClass === k).length / alloys.length,
  );
  return alloys.map(({ alloy: { reports } }) => {
    const publications = reports.reduce((sum, { references }) => sum + references, 0);
    return phaseClasses.map((name, k) => {
      const said = reports
        .filter(({ phases }) => phaseClassOf(phases) === name)
        .reduce((sum, { references }) => sum + references, 0);
      return Math.sqrt(publications) * ((1 - NOISE) * (said / publications) + NOISE * frequencies[k]!);
    });
  });
}
