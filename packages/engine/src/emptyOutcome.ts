import type { Outcome } from '@tiegel/contract';

/** The outcome of no point, for a search with so many limits: merging it changes nothing. */
export function emptyOutcome(limits: number): Outcome {
  return {
    points: 0,
    passed: 0,
    passedEach: new Array<number>(limits).fill(0),
    outside: {},
    best: new Float64Array(),
    bestOfSystems: new Float64Array(),
  };
}
