import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { range } from '../verdicts/predicate.ts';

/**
 * Entropy outweighs the pull of equimolar compounds at the anneal temperature: κ below its bound,
 * multiplied out. The margin is a late quantity: without its value there is no verdict.
 * @source Senkov & Miracle, J. Alloys Compd. 658 (2016) 603 (from memory)
 */
export const senkovMiracle2016: Criterion = {
  id: 'senkovMiracle2016',
  name: 'Senkov & Miracle 2016',
  claim: 'One disordered solution is expected.',
  predicate: range('kappaMargin', { above: 0 }),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'Senkov & Miracle',
    year: 2016,
    where: 'J. Alloys Compd. 658, 603',
    checked: 'from memory',
  },
  caution:
    'It rests on Miedema’s model of the compounds, which is off by some 10 kJ/mol, and it is blind to demixing: elements that repel each other, as copper and molybdenum do, meet it.',
};
