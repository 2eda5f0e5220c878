import type { Limit } from '@tiegel/contract';
import { limitTolerance } from '@tiegel/contract/terms';

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
