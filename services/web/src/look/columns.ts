import type { SearchSpecification } from '@tiegel/contract';
import type { QuantityView } from '../server/types.ts';

/** The quantities of a table: those chosen, else what the search ranks and limits first, then the others. */
export function columnsOf(
  chosen: readonly string[] | null,
  { rank, limits }: SearchSpecification,
  quantities: readonly QuantityView[],
): QuantityView[] {
  const asked = [...rank, ...limits].map(({ quantity }) => quantity);
  const ids = chosen ?? [...new Set([...asked, ...quantities.map(({ id }) => id)])];
  return ids.flatMap((id) => quantities.find((quantity) => quantity.id === id) ?? []);
}
