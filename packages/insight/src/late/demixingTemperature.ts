import { demixing, demixingTrust } from '../regularSolution/demixing.ts';
import type { LateQuantity } from './lateQuantity.ts';

/** 0 K, not null, where the solution never separates: so that 'at most 800 K' keeps what separates at no temperature. */
export const demixingTemperature: LateQuantity = {
  id: 'demixingTemperature',
  name: 'Demixing temperature',
  symbol: 'T_sp',
  unit: 'K',
  notation:
    'the highest T at which the Hessian of Σ 4Hᵢⱼcᵢcⱼ + RT Σ c ln c on Σ dc = 0 is singular; 0 where none is',
  meaning: 'Below it the random solution would separate without any barrier; 0 where it never would.',
  decimals: 0,
  source: {
    authors: 'textbook spinodal of a regular solution',
    year: null,
    where: 'on the pair enthalpies in force',
    checked: 'from memory',
  },
  caution: demixingTrust,
  compute(composition, facts) {
    const found = demixing(composition, facts);
    return found && (found.temperature ?? 0);
  },
};
