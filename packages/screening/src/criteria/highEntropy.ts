import { GAS_CONSTANT_J_PER_MOL_K } from '../formula/gasConstant.ts';
import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { range } from '../verdicts/predicate.ts';

/**
 * The entropy that gave the alloys their name: at least 1.5 R.
 * @source common usage after Yeh, Ann. Chim. Sci. Mat. 31 (2006) 633 (from memory)
 */
export const highEntropy: Criterion = {
  id: 'highEntropy',
  name: 'Usual definition of high entropy',
  claim: 'High entropy favours one disordered solution.',
  predicate: range('configurationalEntropy', { atLeast: 1.5 * GAS_CONSTANT_J_PER_MOL_K }),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'Yeh',
    year: 2006,
    where: 'Ann. Chim. Sci. Mat. 31, 633',
    checked: 'from memory',
  },
  caution:
    'A name more than a prediction: among published alloys those of high entropy are one solution less often.',
};
