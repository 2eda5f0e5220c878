import { valuesOf } from '@tiegel/screening';
import { demixingTrust } from '../regularSolution/demixing.ts';
import { demixingTemperature } from './demixingTemperature.ts';
import type { LateQuantity } from './lateQuantity.ts';

/** Demixing temperature over the mean melting temperature of the elements. */
export const demixingRatio: LateQuantity = {
  id: 'demixingRatio',
  name: 'Demixing over melting temperature',
  symbol: 'T_sp/T_m',
  unit: '',
  notation: 'T_sp/T_m, T_m = Σ c Tᵢ; 0 where it never separates',
  meaning: 'How near to melting the random solution would begin to separate; above 1 the melt itself may.',
  decimals: 2,
  source: { ...demixingTemperature.source },
  caution: demixingTrust,
  compute(composition, facts, conditions) {
    const temperature = demixingTemperature.compute(composition, facts, conditions);
    const { meltingTemperature = null } = valuesOf(composition, facts, ['meltingTemperature']);
    return temperature === null || meltingTemperature === null ? null : temperature / meltingTemperature;
  },
};
