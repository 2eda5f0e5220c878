import type { Criterion } from '../verdicts/criterion.ts';
import { range } from '../verdicts/predicate.ts';

/**
 * Many valence electrons go with fcc.
 * @source Guo, Ng, Lu & Liu, J. Appl. Phys. 109 (2011) 103505 (from memory)
 */
export const guo2011Fcc: Criterion = {
  id: 'guo2011Fcc',
  name: 'Guo et al. 2011, fcc',
  claim: 'Where the alloy is one solution, it is fcc.',
  predicate: range('valenceElectronConcentration', { atLeast: 8 }),
  scope: null,
  positiveClass: { what: 'fcc, among alloys of one solution', observed: 'fcc of one solution' },
  source: {
    authors: 'Guo et al.',
    year: 2011,
    where: 'J. Appl. Phys. 109, 103505',
    checked: 'from memory',
  },
  caution:
    'It speaks of alloys that are one solution, and does not tell whether an alloy is. Between 6.87 and 8 both are expected beside each other.',
};
