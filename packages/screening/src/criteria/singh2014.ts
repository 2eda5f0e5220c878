import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { range } from '../verdicts/predicate.ts';

/**
 * Entropy against size mismatch; between 0.24 and 0.96 J/(mol K) two phases are expected, below
 * compounds.
 * @source Singh, Kumar, Dwivedi & Subramaniam, Intermetallics 53 (2014) 112 (from memory)
 */
export const singh2014: Criterion = {
  id: 'singh2014',
  name: 'Singh et al. 2014',
  claim: 'One disordered solution is expected; between 0.24 and 0.96 J/(mol K) two phases are.',
  predicate: range('lambda', { above: 0.96 }),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'Singh et al.',
    year: 2014,
    where: 'Intermetallics 53, 112',
    checked: 'from memory',
  },
  caution: 'The bound belongs to the radius set that it was found with.',
};
