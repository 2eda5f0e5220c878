import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { every, range } from '../verdicts/predicate.ts';

/**
 * Entropy outweighs enthalpy at the melting temperature, and the sizes fit.
 * @source Yang & Zhang, Mater. Chem. Phys. 132 (2012) 233 (from memory)
 */
export const yangZhang2012: Criterion = {
  id: 'yangZhang2012',
  name: 'Yang & Zhang 2012',
  claim: 'One disordered solution is expected.',
  predicate: every(range('omega', { atLeast: 1.1 }), range('sizeMismatch', { atMost: 6.6 })),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'Yang & Zhang',
    year: 2012,
    where: 'Mater. Chem. Phys. 132, 233',
    checked: 'from memory',
  },
  caution: 'The bound on δ belongs to the radius set that it was found with.',
};
