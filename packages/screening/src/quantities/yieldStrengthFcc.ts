import type { Quantity } from '../definition/quantity.ts';
import { coldEnough } from '../strength/coldEnough.ts';
import { withinFccDomain } from '../strength/fccDomain.ts';
import { withGrainBoundaries } from '../strength/grainBoundaries.ts';
import { fcc } from '../strength/lattices.ts';
import { soluteStrengthening } from '../strength/soluteStrengthening.ts';

/**
 * Yield strength (MPa) of a single fcc solution at the service temperature and strain rate, by
 * solute strengthening (soluteStrengthening.ts); with a grain size, what grain boundaries add
 * (grainBoundaries.ts). No value with more than 5 at.% Al, with Si, C or B, and above 0.9 T_m.
 * @source Varvenne, Luque & Curtin, Acta Mater. 118 (2016) 164 (equations from memory)
 */
export const yieldStrengthFcc: Quantity = {
  id: 'yieldStrengthFcc',
  name: 'Yield strength, if fcc',
  symbol: 'σ_fcc',
  unit: 'MPa',
  formula: withinFccDomain(coldEnough(withGrainBoundaries(soluteStrengthening(fcc).strength))),
  notation: 'σ_fcc = M τ₀ exp(−t^0.91/p) + 494/√(d/µm), t = (kT/ΔE) ln(10⁴ s⁻¹/ε̇)',
  meaning:
    'Strength of one fcc solution from the misfit of its atoms, at the service temperature and strain rate; without a grain size the friction of the lattice alone.',
  range: { min: 0 },
  decimals: 0,
  source: {
    authors: 'Varvenne, Luque & Curtin',
    year: 2016,
    where: 'Acta Mater. 118, 164',
    checked: 'from memory',
  },
  caution:
    'It assumes one fcc solution. As a yield strength off by some 43 % without a grain size, 36 % with one in the CoCrFeMnNi family; the grain-size term is that of CoCrFeMnNi from 77 to 673 K, a guess for other families. Compare no value of fcc with one of bcc.',
};
