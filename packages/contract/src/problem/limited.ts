import { type Fault, fault } from './problem.ts';

/** An answer to thousands of faults helps nobody; this many are named. */
export const mostFaults = 100;

/** The first faults of a list, and where there are more, one that says so. */
export function limited(faults: readonly Fault[]): Fault[] {
  if (faults.length <= mostFaults) return [...faults];
  return [...faults.slice(0, mostFaults), fault('request/more-faults', { named: mostFaults })];
}
