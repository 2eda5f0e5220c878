import type { Substitute } from '@tiegel/contract';

/** By 'likeness' (as the server orders), 'phase' or the id of a quantity. */
export interface Order {
  by: string;
  rising: boolean;
}

/** Substitutes in another order; those without a value come last either way. */
export function ordered(items: readonly Substitute[], { by, rising }: Order): Substitute[] {
  if (by === 'likeness') return rising ? [...items] : items.toReversed();
  const measureOf = (item: Substitute) =>
    by === 'phase' ? (item.phase?.singleSolution ?? null) : (item.quantities[by] ?? null);
  return items.toSorted((a, b) => {
    const [one, other] = [measureOf(a), measureOf(b)];
    if (one === null || other === null) return Number(one === null) - Number(other === null);
    return rising ? one - other : other - one;
  });
}
