import { type Criterion, oneSolution } from '../criterion.ts';
import { range } from '../predicate.ts';

/**
 * What the enthalpy leaves of the entropy outweighs the disorder from unequal sizes.
 * @source Ye, Wang, Lu, Liu & Yang, Scr. Mater. 104 (2015) 53 (from memory)
 */
export const ye2015: Criterion = {
  id: 'ye2015',
  name: 'Ye et al. 2015',
  claim: 'One disordered solution is expected.',
  predicate: range('excessEntropyRatio', { atLeast: 20 }),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'Ye et al.',
    year: 2015,
    where: 'Scr. Mater. 104, 53',
    checked: 'from memory',
  },
  caution: 'The bound belongs to the radius set that it was found with.',
};
