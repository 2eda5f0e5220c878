import { conventionalAlloys, factsFor } from '@tiegel/elements';
import { type Composition, valuesOf } from '@tiegel/screening';

/** An alloy on the scale of configurational entropy. */
export interface OnEntropyScale {
  /** Name of a conventional alloy; null for the candidate. */
  name: string | null;
  /** Designation of a conventional alloy; null for the candidate. */
  designation: string | null;
  /** at.% of a conventional alloy, as given of the candidate */
  composition: Composition;
  /** J/(mol K) */
  entropy: number;
  /** Equal shares of how many elements have this entropy. */
  effectiveElements: number;
}

/**
 * A candidate beside alloys in daily use, by configurational entropy, lowest first.
 * @throws RangeError for an element without data, a negative amount, or no element at all
 */
export function entropyScale(composition: Composition): OnEntropyScale[] {
  const candidate = { name: null, designation: null, composition };
  return [candidate, ...conventionalAlloys]
    .map(({ name, designation, composition: shares }) => {
      const entropy = entropyOf(shares);
      return { name, designation, composition: shares, ...entropy };
    })
    .sort((a, b) => a.entropy - b.entropy);
}

function entropyOf(composition: Composition): { entropy: number; effectiveElements: number } {
  const facts = factsFor(Object.keys(composition));
  const values = valuesOf(composition, facts, ['configurationalEntropy', 'effectiveElements']);
  return { entropy: values.configurationalEntropy!, effectiveElements: values.effectiveElements! };
}
