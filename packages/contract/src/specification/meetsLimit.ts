import { limitTolerance } from './limitTolerance.ts';
import type { Limit } from './specification.ts';

/**
 * Whether a value meets a limit as a search has it: inclusive, and on it within its tolerance.
 * null where there is no value.
 */
export function meetsLimit(value: number | null, { min, max }: Limit): boolean | null {
  if (value === null) return null;
  return (
    (min === undefined || min - value <= limitTolerance(min)) &&
    (max === undefined || value - max <= limitTolerance(max))
  );
}
