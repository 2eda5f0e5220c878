import type { Quantity } from '../definition/quantity.ts';
import { linear } from '../formula/expression.ts';

/**
 * Valence electron concentration VEC, electrons per atom (no unit): VEC = Σ cᵢ VECᵢ, counting
 * s and d electrons (the group number of a transition metal).
 * @source Guo, Ng, Lu & Liu, J. Appl. Phys. 109 (2011) 103505 (equation from memory)
 */
export const valenceElectronConcentration: Quantity = {
  id: 'valenceElectronConcentration',
  name: 'Valence electron concentration',
  symbol: 'VEC',
  unit: '',
  formula: linear('valenceElectrons'),
  notation: 'VEC = Σ cᵢ VECᵢ',
  meaning:
    'Valence electrons per atom. High values (from about 8) go with fcc, low ones (below about 6.9) with bcc.',
  range: { min: 0 },
  decimals: 2,
  source: { authors: 'Guo et al.', year: 2011, where: 'J. Appl. Phys. 109, 103505', checked: 'from memory' },
  caution: 'It tells fcc from bcc where there is one solution; it does not tell whether there is one.',
};
