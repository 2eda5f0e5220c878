import type { ConditionValue, Plan } from '@tiegel/contract';
import { conditions, conditionsOf, quantityFinder } from '@tiegel/screening';
import { ownOf } from '../namedIn.ts';

/**
 * The conditions that belong in a question: those that were set, and those that a limit or the
 * ranking computes with, default or not.
 */
export function conditionsAsked(plan: Pick<Plan, 'specification' | 'columns'>): ConditionValue[] {
  const { limits, rank, front = [], conditions: set = {} } = plan.specification;
  const quantityOf = quantityFinder(ownOf(plan));
  const read = [...limits, ...rank, ...front].flatMap(({ quantity }) => conditionsOf(quantityOf(quantity)));
  return Object.values(conditions)
    .filter(({ name }) => name in set || read.includes(name))
    .map(({ name, label, unit, default: value }) => ({ label, unit, value: set[name] ?? value }));
}
