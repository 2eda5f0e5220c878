import { type Criterion, oneSolution } from '../verdicts/criterion.ts';
import { range } from '../verdicts/predicate.ts';

/**
 * At the melting temperature the solution is at least as stable as the strongest binary rival. Φ is a
 * late quantity: without its value there is no verdict.
 * @source King, Middleburgh, McGregor & Cortie, Acta Mater. 104 (2016) 172 (from memory)
 */
export const king2016: Criterion = {
  id: 'king2016',
  name: 'King et al. 2016',
  claim: 'One disordered solution is expected.',
  predicate: range('kingPhi', { atLeast: 1 }),
  scope: null,
  positiveClass: oneSolution,
  source: {
    authors: 'King et al.',
    year: 2016,
    where: 'Acta Mater. 104, 172',
    checked: 'from memory',
  },
  caution: 'It rests on Miedema’s model of the compounds, which is off by some 10 kJ/mol.',
};
