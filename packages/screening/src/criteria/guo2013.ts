import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { every, range } from '../verdicts/predicate.ts';

/**
 * A window of mixing enthalpy and size mismatch that keeps glasses and compounds out.
 * @source Guo, Hu, Ng & Liu, Intermetallics 41 (2013) 96 (from memory)
 */
export const guo2013: Criterion = {
  id: 'guo2013',
  name: 'Guo et al. 2013',
  claim: 'One disordered solution is expected.',
  predicate: every(
    range('mixingEnthalpy', { above: -11.6, below: 3.2 }),
    range('sizeMismatch', { below: 6.6 }),
  ),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'Guo et al.',
    year: 2013,
    where: 'Intermetallics 41, 96',
    checked: 'from memory',
  },
  caution: 'The bound on δ belongs to the radius set that it was found with.',
};
