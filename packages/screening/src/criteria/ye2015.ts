import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { range } from '../verdicts/predicate.ts';

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
  caution:
    'The bound belongs to the radius set that it was found with, and to its entropy of packing: with the full hard-sphere term, as the paper has it (from memory), φ comes out some 7 % higher than here.',
};
