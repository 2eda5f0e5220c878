import type { Lookup, SearchSpecification } from '@tiegel/contract';
import { lateQuantities, lateQuantityById } from '@tiegel/insight/late';
import { type Own, quantityFinder } from '@tiegel/screening';

/** What is somebody's own in a search: see Own of packages/screening. */
export function ownOf({
  specification,
  columns = [],
}: {
  specification: SearchSpecification;
  columns?: Own['columns'];
}): Own {
  return { columns: columns ?? [], lets: specification.lets ?? {} };
}

/** Name and unit of a quantity as a search words them, with the currency of the prices that it was planned with. */
export function namedIn(currency: string | null, own: Own = {}): Lookup {
  const quantityOf = quantityFinder(own);
  return (id) => {
    const isLate = lateQuantities.some((quantity) => quantity.id === id);
    const { name, unit } = isLate ? lateQuantityById(id) : quantityOf(id);
    return { name, unit: currency === null ? unit : unit.replace('currency', currency) };
  };
}
