import type { SearchView, Substitute } from '@tiegel/contract';

/** Whether a search likes what a replacement does to a quantity that it ranks; null where it does not say or nothing changes. */
export function preferenceOf(id: string, search: SearchView | null, item: Substitute): boolean | null {
  const entry = search?.specification.rank.find(({ quantity }) => quantity === id);
  const change = item.changes[id] ?? null;
  const value = item.quantities[id] ?? null;
  if (!entry || change === null || value === null || change === 0) return null;
  if (entry.prefer === 'high') return change > 0;
  if (entry.prefer === 'low') return change < 0;
  const { target } = entry.prefer;
  return Math.abs(value - target) < Math.abs(value - change - target);
}
