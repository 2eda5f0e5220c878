import type { SearchSpecification } from '@tiegel/contract';
import type { ShownQuantity } from '../server/types.ts';

/** How many columns are shown to somebody who has chosen none, if the search does not ask for more. */
const usualColumns = 12;

/** The quantities that a search ranks and limits, then all others; in the order of the specification. */
export function askedFirst<Quantity extends { id: string }>(
  { rank, limits, keptOnly = [] }: SearchSpecification,
  quantities: readonly Quantity[],
): { asked: Quantity[]; others: Quantity[] } {
  const ids = [...new Set([...rank, ...limits, ...keptOnly].map(({ quantity }) => quantity))];
  return {
    asked: ids.flatMap((id) => quantities.find((quantity) => quantity.id === id) ?? []),
    others: quantities.filter(({ id }) => !ids.includes(id)),
  };
}

/** The columns of a table: those chosen, else what the search asks for and the first of the others. */
export function columnsOf(
  chosen: readonly string[] | null,
  specification: SearchSpecification,
  quantities: readonly ShownQuantity[],
): ShownQuantity[] {
  if (chosen !== null) return chosen.flatMap((id) => quantities.find((quantity) => quantity.id === id) ?? []);
  const { asked, others } = askedFirst(specification, quantities);
  return [...asked, ...others.slice(0, Math.max(0, usualColumns - asked.length))];
}
