import { factsFor, symbols } from '@tiegel/elements';
import { type PublishedAlloy, publishedAlloys } from '@tiegel/elements/publishedAlloys';
import {
  amountsOf,
  bind,
  type Composition,
  evaluator,
  featureFormula,
  phaseFeatures,
} from '@tiegel/screening';

/** The classes of the phase estimate, in the order of its coefficients. */
export const phaseClasses = ['fcc', 'bcc', 'both', 'other'] as const;

/** A published alloy as the phase estimate sees it. */
export interface TrainingAlloy {
  alloy: PublishedAlloy;
  /** values of phaseFeatures, in order and in their units */
  features: number[];
  /** index into phaseClasses */
  phaseClass: number;
}

/** Every published alloy whose phases were reported. */
export function trainingAlloys(): TrainingAlloy[] {
  const featuresOf = phaseFeatureValues();
  return publishedAlloys().flatMap((alloy) =>
    alloy.phaseClass === null
      ? []
      : [
          {
            alloy,
            features: featuresOf(alloy.composition),
            phaseClass: phaseClasses.indexOf(alloy.phaseClass),
          },
        ],
  );
}

/** Prepares the features of the phase estimate for many compositions. */
function phaseFeatureValues(): (composition: Composition) => number[] {
  const facts = factsFor(symbols);
  const { evaluate } = evaluator(bind(phaseFeatures.map(featureFormula), facts));
  const into = new Float64Array(phaseFeatures.length);
  return (composition) => {
    const { members, amounts, total } = amountsOf(composition, facts);
    evaluate(members, amounts, total, into);
    return [...into];
  };
}
