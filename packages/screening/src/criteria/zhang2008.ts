import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { every, range } from '../verdicts/predicate.ts';

/**
 * Windows of mixing enthalpy, size mismatch and entropy in which solid solutions were found.
 * @source Zhang, Zhou, Lin, Chen & Liaw, Adv. Eng. Mater. 10 (2008) 534 (from memory)
 */
export const zhang2008: Criterion = {
  id: 'zhang2008',
  name: 'Zhang et al. 2008',
  claim: 'One disordered solution is expected.',
  predicate: every(
    range('mixingEnthalpy', { atLeast: -15, atMost: 5 }),
    range('sizeMismatch', { atMost: 6.5 }),
    range('configurationalEntropy', { atLeast: 12, atMost: 17.5 }),
  ),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'Zhang et al.',
    year: 2008,
    where: 'Adv. Eng. Mater. 10, 534',
    checked: 'from memory',
  },
  caution: 'The bound on δ belongs to the radius set that it was found with.',
};
