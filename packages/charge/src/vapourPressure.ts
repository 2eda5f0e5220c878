import { elementNumber } from '@tiegel/elements';

const GAS_CONSTANT_J_PER_MOL_K = 8.314462618;
const ATMOSPHERE_PA = 101_325;
/** Metals need about this much to boil, more than Trouton's 88 for organic liquids; mean of common metals, from memory. */
const VAPORISATION_ENTROPY_J_PER_MOL_K = 100;

/**
 * Estimate of the vapour pressure of a pure element (Pa) at a temperature (K), from its boiling
 * temperature T_b alone: ln(p/atm) = (S/R)(1 − T_b/T), Clausius and Clapeyron with one entropy of
 * vaporisation S for all metals. Tables give the usual metals between about a third and three times
 * as much near their melting points; in an alloy an element has less, in proportion to its activity.
 * @returns null where no boiling temperature is known
 */
export function vapourPressure(symbol: string, temperature: number): number | null {
  const boiling = elementNumber(symbol, 'boilingTemperature');
  if (boiling === null) return null;
  const exponent =
    (VAPORISATION_ENTROPY_J_PER_MOL_K / GAS_CONSTANT_J_PER_MOL_K) * (1 - boiling / temperature);
  return ATMOSPHERE_PA * Math.exp(exponent);
}
