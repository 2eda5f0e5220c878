import type { Facts } from '@tiegel/contract';
import { conditionValue } from '../formula/conditions.ts';
import type { Composition } from '../values/valuesOf.ts';
import { bccStrength } from './bccStrength.ts';
import { fccStrength } from './fccStrength.ts';
import type { Strength } from './strength.ts';

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
