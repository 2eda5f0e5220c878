import type { Facts } from '@tiegel/contract';
import { type Composition, criteria, type Verdicts, verdictsOf } from '@tiegel/screening';
import { criterionValues } from '../dossier/criterionValues.ts';

/**
 * Every criterion as a question to a composition, by id, for `weighingError`. All questions to one
 * composition share one answer, so that a corner is worked out once.
 *
 * @param conditions by name, in the units of the conditions of packages/screening
 */
export function criterionVerdicts(
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
): Record<string, (composition: Composition) => boolean | null> {
  const known = new WeakMap<Composition, Verdicts>();
  const verdictsAt = (composition: Composition): Verdicts => {
    const found =
      known.get(composition) ??
      verdictsOf(composition, facts, conditions, criterionValues(composition, facts, conditions));
    known.set(composition, found);
    return found;
  };
  return Object.fromEntries(
    criteria.map(({ id }) => [id, (composition: Composition) => verdictsAt(composition)[id] ?? null]),
  );
}
