import type { Facts } from '@tiegel/contract';
import { conditionValue } from '../conditions.ts';
import type { Composition } from '../valuesOf.ts';
import { bccStrength } from './bccStrength.ts';
import { fccStrength } from './fccStrength.ts';

/** A yield strength with how far to trust it; they belong together wherever one is shown. */
export interface Strength {
  /** MPa; null: no value, and `reason` says why */
  value: number | null;
  /** Whether the alloy is of the kind that the model was tested on; a lower bound where other dislocations decide. */
  domain: 'inside' | 'outside' | 'lower bound';
  /** Median relative error to expect, 0.09 for 9 %; null where nobody measured it */
  error: number | null;
  /** Why there is no value, or what limits it; whole sentences. null: nothing to say */
  reason: string | null;
}

/** The strengths of an alloy as one fcc and as one bcc solution. Which of them it is, if any, strength does not tell. */
export interface StrengthRecord {
  /** service temperature, K */
  temperature: number;
  fcc: Strength;
  bcc: Strength;
}

/**
 * The yield strength at the service temperature, strain rate and grain size, as one fcc and as one
 * bcc solution, with domain and error.
 *
 * @param conditions by name, in the units of conditions.ts; what is not given takes its default
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function strengthOf(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
): StrengthRecord {
  return {
    temperature: conditionValue('serviceTemperature', conditions),
    fcc: fccStrength(composition, facts, conditions),
    bcc: bccStrength(composition, facts, conditions),
  };
}
