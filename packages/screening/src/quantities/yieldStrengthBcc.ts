import type { Quantity } from '../definition/quantity.ts';
import { coldEnough } from '../strength/coldEnough.ts';
import { bcc } from '../strength/lattices.ts';
import { soluteStrengthening } from '../strength/soluteStrengthening.ts';

/**
 * Yield strength (MPa) of a single bcc solution at the service temperature and strain rate, by
 * solute strengthening of edge dislocations (soluteStrengthening.ts). No value above 0.9 T_m.
 * Where it may be trusted strengthOf tells.
 * @source Maresca & Curtin, Acta Mater. 182 (2020) 235 (equations from memory)
 */
export const yieldStrengthBcc: Quantity = {
  id: 'yieldStrengthBcc',
  name: 'Yield strength, if bcc',
  symbol: 'σ_bcc',
  unit: 'MPa',
  formula: coldEnough(soluteStrengthening(bcc).strength),
  notation: 'σ_bcc = M τ₀ exp(−t^0.91/p), t = (kT/ΔE) ln(10⁴ s⁻¹/ε̇)',
  meaning:
    'Strength of one bcc solution from the misfit of its atoms, at the service temperature and strain rate.',
  range: { min: 0 },
  decimals: 0,
  source: {
    authors: 'Maresca & Curtin',
    year: 2020,
    where: 'Acta Mater. 182, 235',
    checked: 'from memory',
  },
  caution:
    'It assumes one bcc solution. Good to some 9 % for Ti, Zr, Hf, V, Nb, Ta, Cr, Mo, W with a volume misfit from 8 to 16 %; below only a lower bound, with other elements off by some 45 %, above 800 °C by up to a factor of 3.5. Whether the alloy is brittle it does not tell.',
};
