import { refractoryElements } from '../strength/refractoryElements.ts';
import type { Criterion } from '../verdicts/criterion.ts';
import { onlyOf, range } from '../verdicts/predicate.ts';

/**
 * Few valence electrons make bcc alloys of refractory metals ductile. It speaks of those alone.
 * @source Sheikh, Shafeie, Hu, Ahlström, Persson, Veselý, Zýka, Klement & Guo, J. Appl. Phys. 120 (2016)
 *   164902 (from memory)
 */
export const sheikh2016: Criterion = {
  id: 'sheikh2016',
  name: 'Sheikh et al. 2016',
  claim: 'The alloy is ductile at room temperature.',
  predicate: range('valenceElectronConcentration', { below: 4.5 }),
  scope: onlyOf(...refractoryElements),
  positiveClass: {
    what: 'ductile, among bcc alloys of refractory metals',
    observed: null,
    untested: 'The published alloys carry no agreed measure of ductility.',
  },
  source: {
    authors: 'Sheikh et al.',
    year: 2016,
    where: 'J. Appl. Phys. 120, 164902',
    checked: 'from memory',
  },
};
