import { type Limit, searchSpecificationFor } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { conditions, quantities } from '@tiegel/screening';
import { readJson } from './readJson.ts';

/**
 * Limits and conditions of the specification in a file; none without a file.
 * @throws ProblemError of the file or of the specification
 */
export function readLimits(file: string | undefined): {
  limits: Limit[];
  conditions?: Record<string, number>;
} {
  if (file === undefined) return { limits: [] };
  const known = { quantities, elements: symbols, conditions: Object.values(conditions) };
  return searchSpecificationFor(known).check(readJson(file)).specification;
}
