import { nearest, problem } from '@tiegel/contract/terms';
import type { Quantity } from '../definition/quantity.ts';
import { quantities } from '../quantities/index.ts';

const byId = new Map(quantities.map((quantity) => [quantity.id, quantity]));

/**
 * The quantity with this id.
 * @throws ProblemError quantity/unknown, with the id that was probably meant
 */
export function quantityById(id: string, pointer = ''): Quantity {
  const found = byId.get(id);
  if (found) return found;
  const near = nearest(id, [...byId.keys()]);
  throw problem('quantity/unknown', near === null ? { id } : { id, near }, pointer);
}

/** A quantity by its id, or itself: one's own stand in no registry. */
export function quantityOf(quantity: string | Quantity): Quantity {
  return typeof quantity === 'string' ? quantityById(quantity) : quantity;
}
