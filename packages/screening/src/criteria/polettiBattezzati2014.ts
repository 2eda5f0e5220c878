import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { every, range } from '../verdicts/predicate.ts';

/**
 * Part of a map of electronegativities and sizes: the field in which solutions were found.
 * @source Poletti & Battezzati, Acta Mater. 75 (2014) 297 (part of the map, from memory)
 */
export const polettiBattezzati2014: Criterion = {
  id: 'polettiBattezzati2014',
  name: 'Poletti & Battezzati 2014',
  claim: 'One disordered solution is expected.',
  predicate: every(
    range('sizeMismatch', { above: 1, below: 6 }),
    range('allenElectronegativitySpread', { above: 3, below: 6 }),
  ),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'Poletti & Battezzati',
    year: 2014,
    where: 'Acta Mater. 75, 297',
    checked: 'from memory',
  },
  caution: 'A part of their map alone. The bound on δ belongs to the radius set that it was found with.',
};
