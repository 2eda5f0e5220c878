import { compounds, compoundsTrust } from '../compounds/compounds.ts';
import type { LateQuantity } from './lateQuantity.ts';

/** Free energy of the random solution above its strongest competitor, at the anneal temperature. */
export const hullDistance: LateQuantity = {
  id: 'hullDistance',
  name: 'Hull distance',
  symbol: 'ΔG_hull',
  unit: 'kJ/mol',
  notation:
    'ΔH − TΔS of the solution − min Σ fₖHₖ over binary compounds and elements of the same composition',
  meaning:
    'How far the random solution lies above the lowest mixture of compounds and elements at the anneal temperature; below 0 the solution is the lower of the two.',
  decimals: 1,
  source: {
    authors: 'de Boer et al., Miedema’s model',
    year: 1988,
    where: 'Cohesion in Metals (North-Holland)',
    checked: 'from memory',
  },
  caution: compoundsTrust,
  compute: (composition, facts, conditions) =>
    compounds(composition, facts, conditions)?.hullDistance ?? null,
};
