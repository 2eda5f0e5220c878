import { ordering, orderingTrust } from '../regularSolution/ordering.ts';
import type { LateQuantity } from './lateQuantity.ts';

/** 0 K, not null, where the solution never orders: so that 'at most 800 K' keeps what orders at no temperature. */
export const orderingTemperature: LateQuantity = {
  id: 'orderingTemperature',
  name: 'Ordering temperature',
  symbol: 'T_ord',
  unit: 'K',
  notation: 'as the demixing temperature with −4Hᵢⱼ in place of 4Hᵢⱼ; 0 where none is',
  meaning:
    'Below it a random bcc solution would order into two sublattices (B2), in mean field; 0 where it never would.',
  decimals: 0,
  source: {
    authors: 'Bragg & Williams',
    year: 1934,
    where: 'Proc. R. Soc. A 145, 699, for many elements by the same Hessian as demixing',
    checked: 'from memory',
  },
  caution: orderingTrust,
  compute(composition, facts) {
    const found = ordering(composition, facts);
    return found && (found.temperature ?? 0);
  },
};
