import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { range } from '../verdicts/predicate.ts';

/**
 * The smallest and the largest atom are packed alike.
 * @source Wang, Huang, Yang, Wang & Liu, Scr. Mater. 94 (2015) 28 (from memory)
 */
export const wang2015: Criterion = {
  id: 'wang2015',
  name: 'Wang et al. 2015',
  claim: 'One disordered solution is expected.',
  predicate: range('gamma', { below: 1.175 }),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'Wang et al.',
    year: 2015,
    where: 'Scr. Mater. 94, 28',
    checked: 'from memory',
  },
  caution:
    'The bound belongs to the radius set that it was found with, and a trace of a large atom counts fully.',
};
