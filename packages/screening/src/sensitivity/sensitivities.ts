import type { Facts } from '@tiegel/contract';
import { bind } from '../binding/bind.ts';
import type { Quantity } from '../definition/quantity.ts';
import { quantityOf } from '../registry/quantityById.ts';
import { evaluator } from '../values/evaluator.ts';
import { amountsOf, type Composition } from '../values/valuesOf.ts';
import { derivative } from './derivative.ts';

/**
 * How a quantity responds to a little more of each element present, at the expense of all the
 * others in proportion: dQ/dcᵢ along cᵢ + h, cⱼ (1 − h/(1 − cᵢ)).
 *
 * In the quantity's unit per unit of mole fraction: a hundredth of it is what one at.% more does.
 * null where there is no value or no derivative: for a pure element, at a cap's edge. An element
 * that is absent has none either (the entropy rises infinitely steeply there).
 *
 * @param conditions by name, in the units of conditions.ts
 * @throws ProblemError quantity/unknown
 */
export function sensitivities(
  quantity: string | Quantity,
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
): Record<string, number | null> {
  const program = bind([quantityOf(quantity).formula], facts, conditions);
  const { members, amounts, total } = amountsOf(composition, facts);
  const { evaluate, values } = evaluator(program);
  evaluate(members, amounts, total, new Float64Array(1));
  const shares = Array.from(amounts, (amount) => amount / total);
  const rates = members.map((member, at) => {
    const changes = shares.map((share, other) => (other === at ? 1 : -share / (1 - shares[at]!)));
    const [rate] = derivative(program, values, { members, shares, changes });
    const exists =
      members.length > 1 && Number.isFinite(rate) && Number.isFinite(values[program.outputs[0]!]);
    return [facts.symbols[member]!, exists ? rate! : null];
  });
  return Object.fromEntries(rates);
}
