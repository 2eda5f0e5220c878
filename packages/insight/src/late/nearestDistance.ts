import { neighboursTrust, novelty } from '../neighbours/nearestPublished.ts';
import type { LateQuantity } from './lateQuantity.ts';

/** Distance to the nearest published alloy. */
export const nearestDistance: LateQuantity = {
  id: 'nearestDistance',
  name: 'Distance to nearest published alloy',
  symbol: 'd',
  unit: '',
  notation: 'min ½ Σ |Δc| over the published alloys',
  meaning: 'The share of atoms that would have to be exchanged to make a published alloy of it, 0 to 1.',
  decimals: 3,
  source: {
    authors: 'Borg et al., for the alloys',
    year: 2020,
    where: 'Sci. Data 7, 430',
    checked: 'ours, no source',
  },
  caution: neighboursTrust,
  compute: (composition) => novelty(composition),
};
