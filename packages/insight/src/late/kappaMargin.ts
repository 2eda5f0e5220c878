import { compoundsTrust } from '../compounds/compounds.ts';
import { kappaMargin as marginOf } from '../compounds/kappaMargin.ts';
import type { LateQuantity } from './lateQuantity.ts';

/** The criterion of Senkov & Miracle as a margin. */
export const kappaMargin: LateQuantity = {
  id: 'kappaMargin',
  name: 'Entropy margin over compounds',
  symbol: 'Δκ',
  unit: 'kJ/mol',
  notation: '0.4 T ΔS − (ΔH − ΔH_IM) at the anneal temperature',
  meaning:
    'By how much the entropy of the random solution outweighs the pull of equimolar compounds; above 0 one solution is expected. No value for a pure element.',
  decimals: 1,
  source: {
    authors: 'Senkov & Miracle',
    year: 2016,
    where: 'J. Alloys Compd. 658, 603',
    checked: 'from memory',
  },
  caution: compoundsTrust,
  compute: marginOf,
};
