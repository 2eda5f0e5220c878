import type { Criterion } from '../verdicts/criterion.ts';
import { contains, range } from '../verdicts/predicate.ts';

/**
 * The range of valence electrons in which alloys with chromium or vanadium form σ when they are
 * annealed.
 * @source Tsai et al., Mater. Res. Lett. 1 (2013) 207 (from memory)
 */
export const tsai2013: Criterion = {
  id: 'tsai2013',
  name: 'Tsai et al. 2013',
  claim: 'A σ phase forms on annealing.',
  predicate: range('valenceElectronConcentration', { atLeast: 6.88, atMost: 7.84 }),
  scope: contains('Cr', 'V'),
  positiveClass: {
    what: 'a σ phase after annealing',
    isSecondPhase: true,
    observed: null,
    untested: 'The labels of the published alloys say “second phase” without saying which.',
  },
  source: {
    authors: 'Tsai et al.',
    year: 2013,
    where: 'Mater. Res. Lett. 1, 207',
    checked: 'from memory',
  },
};
