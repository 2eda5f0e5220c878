import { atMost, condition, type Expression, times, within } from '../formula/expression.ts';
import { meltingTemperature } from '../quantities/meltingTemperature.ts';

/** The homologous temperature above which no strength is given: nothing but diffusion decides there. */
export const HIGHEST_HOMOLOGOUS_TEMPERATURE = 0.9;

/** A strength where the service temperature is at most 0.9 of the melting temperature, no value above. */
export function coldEnough(strength: Expression): Expression {
  const highest = times(HIGHEST_HOMOLOGOUS_TEMPERATURE, meltingTemperature.formula);
  return within(atMost(condition('serviceTemperature'), highest), strength);
}
