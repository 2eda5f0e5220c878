import type { Facts } from '@tiegel/contract';
import { bind } from '../binding/bind.ts';
import type { Expression } from '../formula/expression.ts';
import { evaluator } from './evaluator.ts';
import { preparedOnce } from './preparedOnce.ts';
import { amountsOf, type Composition } from './valuesOf.ts';

const bound = preparedOnce(
  (formula: Expression) => formula,
  (facts, formula, conditions) => evaluator(bind([formula], facts, conditions)),
);

/**
 * The value of a formula that is no quantity of the registry, at one composition; null where it
 * has none.
 * @param conditions by name, in the units of conditions.ts; what is not given takes its default
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function formulaValue(
  formula: Expression,
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
): number | null {
  const { members, amounts, total } = amountsOf(composition, facts);
  const into = new Float64Array(1);
  bound(facts, formula, conditions).evaluate(members, amounts, total, into);
  return Number.isFinite(into[0]) ? into[0]! : null;
}
