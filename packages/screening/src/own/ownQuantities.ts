import { type Fault, nearest, ProblemError, problem } from '@tiegel/contract/terms';
import type { OwnColumn } from '@tiegel/elements';
import type { Quantity } from '../definition/quantity.ts';
import { quantities } from '../quantities/index.ts';
import { quantityById } from '../registry/quantityById.ts';
import { ownColumnQuantity } from './ownColumnQuantity.ts';
import { ownQuantity } from './ownQuantity.ts';

/** What a search has of one's own: columns of element data, and figures of merit by name, as typed. */
export interface Own {
  columns?: readonly Omit<OwnColumn, 'values'>[];
  lets?: Readonly<Record<string, string>>;
}

/**
 * One's own as quantities like any other: the columns, then the figures of merit in the order in
 * which they are written. Each may name the registry's, the columns and what stands before it.
 * @throws ProblemError expression/*, column/name-taken: every fault, those of a figure of merit
 *   with the pointer /lets/NAME
 */
export function ownQuantities({ columns = [], lets = {} }: Own): Quantity[] {
  const own: Quantity[] = [];
  const faults: Fault[] = [];
  const add = (make: (known: readonly Quantity[]) => Quantity): void => {
    try {
      own.push(make([...quantities, ...own]));
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      faults.push(...error.faults);
    }
  };
  for (const column of columns) add((known) => ownColumnQuantity({ ...column, values: {} }, known));
  for (const [name, text] of Object.entries(lets)) {
    add((known) =>
      ownQuantity(name, text, known, `/lets/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`),
    );
  }
  if (faults.length > 0) throw new ProblemError(faults);
  return own;
}

/** Finds a quantity by its id, one's own or the registry's. */
export type QuantityFinder = (id: string, pointer?: string) => Quantity;

/**
 * A finder over the registry and one's own.
 * @throws ProblemError as ownQuantities does; what it returns throws quantity/unknown
 */
export function quantityFinder(own: Own): QuantityFinder {
  const mine = new Map(ownQuantities(own).map((quantity) => [quantity.id, quantity]));
  if (mine.size === 0) return quantityById;
  const ids = [...quantities.map(({ id }) => id), ...mine.keys()];
  return (id, pointer = '') => {
    const found = mine.get(id);
    if (found) return found;
    const near = nearest(id, ids);
    if (ids.includes(id) || near === null) return quantityById(id, pointer);
    throw problem('quantity/unknown', { id, near }, pointer);
  };
}
