import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { every, range } from '../verdicts/predicate.ts';

/**
 * Wider windows of mixing enthalpy, size mismatch and entropy, from more alloys.
 * @source Guo & Liu, Prog. Nat. Sci. Mater. Int. 21 (2011) 433 (from memory)
 */
export const guoLiu2011: Criterion = {
  id: 'guoLiu2011',
  name: 'Guo & Liu 2011',
  claim: 'One disordered solution is expected.',
  predicate: every(
    range('mixingEnthalpy', { atLeast: -22, atMost: 7 }),
    range('sizeMismatch', { atMost: 8.5 }),
    range('configurationalEntropy', { atLeast: 11, atMost: 19.5 }),
  ),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'Guo & Liu',
    year: 2011,
    where: 'Prog. Nat. Sci. Mater. Int. 21, 433',
    checked: 'from memory',
  },
  caution: 'The bound on δ belongs to the radius set that it was found with.',
};
