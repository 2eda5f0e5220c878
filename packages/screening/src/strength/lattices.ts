import type { Lattice } from './soluteStrengthening.ts';

/**
 * Dislocations of fcc, b = (4V)^(1/3)/√2.
 * @source Varvenne, Luque & Curtin, Acta Mater. 118 (2016) 164 (from memory). The exponential form
 *   of the temperature dependence is published for bcc; that it serves fcc too, where two branches
 *   are usual but jump by 5 to 8 %, is our choice.
 */
export const fcc: Lattice = {
  lineTension: 0.123,
  stressFactor: 0.01785,
  barrierFactor: 1.5618,
  taylorFactor: 3.06,
  softening: 0.57,
  burgersCubePerVolume: Math.SQRT2,
};

/**
 * Edge dislocations of bcc, b = (√3/2)(2V)^(1/3).
 * @source Maresca & Curtin, Acta Mater. 182 (2020) 235 (from memory)
 */
export const bcc: Lattice = {
  lineTension: 1 / 12,
  stressFactor: 0.04,
  barrierFactor: 2,
  taylorFactor: 3.067,
  softening: 0.55,
  burgersCubePerVolume: (3 * Math.sqrt(3)) / 4,
};
