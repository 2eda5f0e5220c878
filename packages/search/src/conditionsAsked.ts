import type { ConditionValue, SearchSpecification } from '@tiegel/contract';
import { conditions, conditionsOf, quantityById } from '@tiegel/screening';

/**
 * The conditions that belong in a question: those that were set, and those that a limit or the
 * ranking computes with, default or not.
 */
export function conditionsAsked({
  limits,
  rank,
  conditions: set = {},
}: SearchSpecification): ConditionValue[] {
  const read = [...limits, ...rank].flatMap(({ quantity }) => conditionsOf(quantityById(quantity)));
  return Object.values(conditions)
    .filter(({ name }) => name in set || read.includes(name))
    .map(({ name, label, unit, default: value }) => ({ label, unit, value: set[name] ?? value }));
}
