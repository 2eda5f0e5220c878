import type { Facts } from '@tiegel/contract';
import { criteria } from '../criteria/index.ts';
import { quantities } from '../quantities/index.ts';
import { presentIn } from '../values/presentIn.ts';
import { type Composition, type QuantityValues, valuesOf } from '../values/valuesOf.ts';
import type { Criterion } from './criterion.ts';
import { predicateHolds, quantitiesOf } from './predicate.ts';

/** By the id of the criterion: whether the alloy fulfils it; null where a value lacks or the rule does not speak of it. */
export type Verdicts = Record<string, boolean | null>;

/**
 * Whether an alloy fulfils a criterion, from values that are at hand, late ones among them. null
 * where a value that the rule names is missing, and where the rule does not speak of the alloy
 * (isSpokenOf tells the two apart).
 */
export function verdictOf(
  criterion: Criterion,
  composition: Composition,
  values: Readonly<QuantityValues>,
): boolean | null {
  if (isSpokenOf(criterion, composition, values) !== true) return null;
  return predicateHolds(criterion.predicate, values, presentIn(composition));
}

/** Whether a criterion speaks of an alloy at all; null where a value that decides it is missing. */
export function isSpokenOf(
  { scope }: Criterion,
  composition: Composition,
  values: Readonly<QuantityValues>,
): boolean | null {
  return scope === null ? true : predicateHolds(scope, values, presentIn(composition));
}

/**
 * The verdicts of all criteria. Those on quantities that are no closed formula (King, Senkov &
 * Miracle) are null unless their values are handed in.
 *
 * @param conditions by name, in the units of conditions.ts
 * @param late values of late quantities, by id
 * @throws RangeError for an element that the facts lack, a negative amount, or no element at all
 */
export function verdictsOf(
  composition: Composition,
  facts: Facts,
  conditions: Readonly<Record<string, number>> = {},
  late: Readonly<QuantityValues> = {},
): Verdicts {
  const values = { ...valuesOf(composition, facts, closed, conditions), ...late };
  return Object.fromEntries(
    criteria.map((criterion) => [criterion.id, verdictOf(criterion, composition, values)]),
  );
}

/** The closed quantities that some criterion names. */
const closed = [
  ...new Set(
    criteria.flatMap(({ predicate, scope }) => [predicate, ...(scope ? [scope] : [])]).flatMap(quantitiesOf),
  ),
].filter((id) => quantities.some((quantity) => quantity.id === id));
