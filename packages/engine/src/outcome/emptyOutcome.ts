import type { Outcome, Tally } from '@tiegel/contract';
import { counted } from './counted.ts';

/** The outcome of no point, for a search with so many limits and such a tally: merging it changes nothing. */
export function emptyOutcome(limits: number, tally: Tally = 'each'): Outcome {
  return {
    points: 0,
    ...counted(tally, { passed: 0, passedEach: new Array<number>(limits).fill(0), outside: {} }),
    best: new Float64Array(),
    bestOfSystems: new Float64Array(),
  };
}
