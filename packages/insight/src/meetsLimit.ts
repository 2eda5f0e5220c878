import type { Limit } from '@tiegel/contract';

/**
 * Whether a value meets a limit as a search has it: inclusive, and on it within
 * 1e-12·max(1, |limit|). null where there is no value.
 */
export function meetsLimit(value: number | null, { min, max }: Limit): boolean | null {
  if (value === null) return null;
  const slack = (limit: number): number => 1e-12 * Math.max(1, Math.abs(limit));
  return (min === undefined || min - value <= slack(min)) && (max === undefined || value - max <= slack(max));
}
