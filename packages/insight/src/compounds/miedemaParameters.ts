import type { Facts } from '@tiegel/contract';
import { sourcedValue } from '@tiegel/elements';

/** What Miedema's model knows of an element; units as of the columns in packages/elements. */
export interface MiedemaParameters {
  /** φ*, V */
  potential: number;
  /** n_ws^(1/3), (density units)^(1/3) */
  electronDensity: number;
  /** V^(2/3) of the pure element, cm2 */
  surface: number;
  /** R */
  hybridisation: number;
  /** a */
  volume: number;
  /** Energy that turns the element into a metal, kJ/mol */
  transformation: number;
  /** Cu, Ag, Au and the lanthanides included */
  isTransition: boolean;
}

/** The parameters of an element of the facts; null where one of them is unknown. */
export function miedemaParameters(symbol: string, facts: Facts): MiedemaParameters | null {
  const member = facts.symbols.indexOf(symbol);
  const [potential, electronDensity, surface, hybridisation, volume, transformation] = [
    'miedemaPotential',
    'miedemaElectronDensity',
    'miedemaSurface',
    'miedemaHybridisation',
    'miedemaVolume',
    'miedemaTransformation',
  ].map((column) => facts.columns[column]?.[member] ?? null);
  if (potential == null || electronDensity == null || surface == null) return null;
  if (hybridisation == null || volume == null || transformation == null) return null;
  // The class is a word, which facts do not carry: it tells the formula, and no lab has another.
  const isTransition = sourcedValue(symbol, 'miedemaClass').value === 'transition';
  return { potential, electronDensity, surface, hybridisation, volume, transformation, isTransition };
}
