import { valuesOf } from '@tiegel/screening';
import { orderingTrust } from '../regularSolution/ordering.ts';
import type { LateQuantity } from './lateQuantity.ts';
import { orderingTemperature } from './orderingTemperature.ts';

/** Ordering temperature over the mean melting temperature of the elements. */
export const orderingRatio: LateQuantity = {
  id: 'orderingRatio',
  name: 'Ordering over melting temperature',
  symbol: 'T_ord/T_m',
  unit: '',
  notation: 'T_ord/T_m, T_m = Σ c Tᵢ; 0 where it never orders',
  meaning:
    'How near to melting the random solution would begin to order; above 1 it would never be disordered.',
  decimals: 2,
  source: { ...orderingTemperature.source },
  caution: orderingTrust,
  compute(composition, facts, conditions) {
    const temperature = orderingTemperature.compute(composition, facts, conditions);
    const { meltingTemperature = null } = valuesOf(composition, facts, ['meltingTemperature']);
    return temperature === null || meltingTemperature === null ? null : temperature / meltingTemperature;
  },
};
