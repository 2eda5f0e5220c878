import type { Criterion } from '../verdicts/criterion.ts';
import { every, range } from '../verdicts/predicate.ts';

/**
 * Unequal electronegativities and sizes together go with Laves phases.
 * @source Yurchenko, Stepanov & Salishchev, Mater. Sci. Technol. 33 (2017) 17 (from memory)
 */
export const yurchenko2017: Criterion = {
  id: 'yurchenko2017',
  name: 'Yurchenko et al. 2017',
  claim: 'A Laves phase is expected.',
  predicate: every(range('allenElectronegativitySpread', { above: 7 }), range('sizeMismatch', { above: 5 })),
  scope: null,
  positiveClass: { what: 'a Laves phase', isSecondPhase: true, observed: 'Laves phase' },
  source: {
    authors: 'Yurchenko et al.',
    year: 2017,
    where: 'Mater. Sci. Technol. 33, 17',
    checked: 'from memory',
  },
  caution:
    'The bound on δ belongs to the radius set that it was found with. Few published labels name a Laves phase.',
};
