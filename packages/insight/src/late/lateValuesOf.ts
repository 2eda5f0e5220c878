import type { Facts } from '@tiegel/contract';
import { nearest, problem } from '@tiegel/contract/terms';
import type { Composition, QuantityValues } from '@tiegel/screening';
import { lateQuantities } from './lateQuantities.ts';
import type { LateQuantity } from './lateQuantity.ts';

const byId = new Map(lateQuantities.map((quantity) => [quantity.id, quantity]));

/**
 * The late quantity with this id.
 * @throws ProblemError quantity/unknown, with the id that was probably meant
 */
export function lateQuantityById(id: string, pointer = ''): LateQuantity {
  const found = byId.get(id);
  if (found) return found;
  const near = nearest(id, [...byId.keys()]);
  throw problem('quantity/unknown', near === null ? { id } : { id, near }, pointer);
}

/**
 * Late quantities of one composition, by id in their units; null where there is no value. Some
 * tenths of a millisecond each for an alloy of five elements.
 *
 * @param facts kept and handed in again for every composition of a search: what depends on them alone is worked out once
 * @param ids all by default
 * @param conditions by name, in the units of the conditions of packages/screening
 * @throws ProblemError quantity/unknown
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function lateValuesOf(
  composition: Composition,
  facts: Facts,
  ids: readonly string[] = [...byId.keys()],
  conditions: Readonly<Record<string, number>> = {},
): QuantityValues {
  return Object.fromEntries(
    ids.map((id) => [id, lateQuantityById(id).compute(composition, facts, conditions)]),
  );
}
