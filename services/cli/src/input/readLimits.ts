import { type Limit, type SearchSpace, searchSpecificationFor } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { conditions, quantities } from '@tiegel/screening';
import { readSpecification } from './readSpecification.ts';

/**
 * Limits, space and conditions of the specification in a file; none without a file.
 * @throws ProblemError of the file or of the specification
 */
export function readLimits(file: string | undefined): {
  limits: Limit[];
  /** null without a file */
  space: SearchSpace | null;
  conditions?: Record<string, number>;
} {
  if (file === undefined) return { limits: [], space: null };
  const known = { quantities, elements: symbols, conditions: Object.values(conditions) };
  const { specification } = searchSpecificationFor(known).check(readSpecification(file));
  return { ...specification, space: specification };
}
