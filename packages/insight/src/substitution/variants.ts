import type { Composition } from '@tiegel/screening';

/** One way to replace an element: amounts in at.%. */
export interface Variant {
  replaced: Record<string, number>;
  by: Record<string, number>;
  composition: Record<string, number>;
}

/**
 * An alloy with some of an element exchanged, atom for atom, for others.
 * @param alloy at.%, 100 in sum, holding `replace`
 * @param share of the element to be replaced, above 0, at most 1
 * @param partners who come instead, in equal parts; they may be in the alloy already
 */
export function variant(
  alloy: Composition,
  replace: string,
  share: number,
  partners: readonly string[],
): Variant {
  const amount = alloy[replace]! * share;
  const kept = share === 1 ? 0 : alloy[replace]! - amount;
  const by = Object.fromEntries(partners.map((symbol) => [symbol, amount / partners.length]));
  const { [replace]: _, ...others } = alloy;
  const composition: Record<string, number> = kept > 0 ? { ...others, [replace]: kept } : { ...others };
  for (const symbol of partners) composition[symbol] = (composition[symbol] ?? 0) + by[symbol]!;
  const ordered = Object.fromEntries(Object.entries(composition).sort(([a], [b]) => (a < b ? -1 : 1)));
  return { replaced: { [replace]: amount }, by, composition: ordered };
}
