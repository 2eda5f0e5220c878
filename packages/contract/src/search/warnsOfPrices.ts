import type { SearchView } from './search.ts';

type Priced = Pick<SearchView, 'specification' | 'moreQuantities' | 'kept' | 'finishedAt' | 'prices'>;

/**
 * Whether a reader must hear that the prices behind a search are invented. What is kept shows its cost, whatever
 * was asked; a search that has ended with nothing kept counts with prices only where it asks for them.
 * @param quantities every quantity that is known to all searches
 */
export function warnsOfPrices(search: Priced, quantities: readonly { id: string; unit: string }[]): boolean {
  const { prices, kept, finishedAt, moreQuantities, specification } = search;
  if (!prices?.invented) return false;
  if (kept > 0 || finishedAt === null) return true;
  const { limits, rank, front = [], keptOnly = [], lets = {} } = specification;
  const named = new Set([...limits, ...rank, ...front, ...keptOnly].map(({ quantity }) => quantity));
  // The unit of an expression need not show the prices that it reads: one may divide them by one another.
  for (const formula of Object.values(lets)) for (const word of formula.match(/\w+/g) ?? []) named.add(word);
  return [...quantities, ...moreQuantities].some(
    ({ id, unit }) => named.has(id) && unit.includes('currency'),
  );
}
