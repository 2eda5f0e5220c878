import type { Facts } from '@tiegel/contract';
import { missingIn } from '@tiegel/elements';
import { columnsOf } from '../definition/columnsOf.ts';
import type { Quantity } from '../definition/quantity.ts';
import { quantityOf } from '../registry/quantityById.ts';
import { presentIn } from './presentIn.ts';
import type { Composition } from './valuesOf.ts';

/** A value that is not known: of an element, or of a pair written 'Al-Ni'; `value` is the id of the column. */
export interface MissingValue {
  element: string;
  value: string;
}

/**
 * Why a quantity has no value for want of data: everything that it reads and that the facts lack
 * for the elements present. Empty where nothing lacks.
 * @throws ProblemError quantity/unknown
 */
export function missingFor(
  quantity: string | Quantity,
  composition: Composition,
  facts: Facts,
): MissingValue[] {
  const present = presentIn(composition);
  const { elements, pairs } = columnsOf(quantityOf(quantity));
  return [...elements, ...pairs].flatMap((value) =>
    missingIn(facts, value, present).map((element) => ({ element, value })),
  );
}
