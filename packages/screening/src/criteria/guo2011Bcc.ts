import type { Criterion } from '../verdicts/criterion.ts';
import { range } from '../verdicts/predicate.ts';

/**
 * Few valence electrons go with bcc.
 * @source Guo, Ng, Lu & Liu, J. Appl. Phys. 109 (2011) 103505 (from memory)
 */
export const guo2011Bcc: Criterion = {
  id: 'guo2011Bcc',
  name: 'Guo et al. 2011, bcc',
  claim: 'Where the alloy is one solution, it is bcc.',
  predicate: range('valenceElectronConcentration', { below: 6.87 }),
  scope: null,
  positiveClass: { what: 'bcc, among alloys of one solution', observed: 'bcc of one solution' },
  source: {
    authors: 'Guo et al.',
    year: 2011,
    where: 'J. Appl. Phys. 109, 103505',
    checked: 'from memory',
  },
  caution:
    'It speaks of alloys that are one solution, and does not tell whether an alloy is. Between 6.87 and 8 both are expected beside each other.',
};
