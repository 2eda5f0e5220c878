import { compoundsTrust } from '../compounds/compounds.ts';
import { kingPhi as phiOf } from '../compounds/kingPhi.ts';
import type { LateQuantity } from './lateQuantity.ts';

/** Φ of King et al. */
export const kingPhi: LateQuantity = {
  id: 'kingPhi',
  name: 'Solution against strongest binary',
  symbol: 'Φ',
  unit: '',
  notation: 'Φ = (ΔH − T_m ΔS)/(−|ΔG_max|), held between −1000 and 1000',
  meaning:
    'Free energy of the random solution at its melting temperature against the strongest compound or repulsion among its pairs; from 1 on one solution is expected. No value for a pure element.',
  decimals: 2,
  source: { authors: 'King et al.', year: 2016, where: 'Acta Mater. 104, 172', checked: 'from memory' },
  caution: `The strongest pair counts even where there is little of it. ${compoundsTrust}`,
  compute: (composition, facts) => phiOf(composition, facts),
};
