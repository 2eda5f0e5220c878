import { formatComposition } from '@tiegel/elements';
import type { KnownAlloy } from './knownAlloys.ts';

/** What known alloys are put in order by. */
export const alloyOrders = ['composition', 'own', 'name', 'phases', 'process', 'source'] as const;

export type AlloyOrder = (typeof alloyOrders)[number];

/** What each order looks at; null: nothing is known. A published alloy is told by its publication. */
const keys: Readonly<Record<AlloyOrder, (alloy: KnownAlloy) => string | null>> = {
  composition: ({ composition }) => formatComposition(composition),
  own: ({ own }) => (own ? 'own' : null),
  name: ({ name }) => name || null,
  phases: ({ phases }) => phases,
  process: ({ process }) => process,
  source: ({ doi, source }) => doi[0] ?? source,
};

/** Alloys in an order, those without a value last either way; equal ones stay as they stood. */
export function orderAlloys(
  alloys: readonly KnownAlloy[],
  order: AlloyOrder,
  direction: 'asc' | 'desc',
): KnownAlloy[] {
  // Numbers inside words by their size: Al2 before Al10.
  const collator = new Intl.Collator('en', { numeric: true });
  const sign = direction === 'asc' ? 1 : -1;
  return alloys
    .map((alloy) => ({ alloy, key: keys[order](alloy) }))
    .sort((a, b) => {
      if (a.key === null || b.key === null) return Number(a.key === null) - Number(b.key === null);
      return sign * collator.compare(a.key, b.key);
    })
    .map(({ alloy }) => alloy);
}
