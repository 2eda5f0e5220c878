import type { Shortlist, ShortlistEntry } from '@tiegel/contract';
import { factsFor, type PairValue, type PriceList, parseAlloy } from '@tiegel/elements';
import { type Phase, phaseOf } from '@tiegel/insight';
import { type QuantityValues, valuesOf } from '@tiegel/screening';

/** An entry of a shortlist with what a reader without the program wants to know of it. */
export interface ShortlistLine extends ShortlistEntry {
  /** at.% */
  composition: Record<string, number>;
  quantities: QuantityValues;
  phase: Phase;
}

/** The entries that were not removed, in order, with every closed quantity at usual conditions. */
export function shortlistLines(
  { entries }: Shortlist,
  prices: PriceList | null,
  pairs: readonly PairValue[] = [],
): ShortlistLine[] {
  return entries
    .filter(({ removed }) => !removed.value)
    .map((entry) => {
      const composition = parseAlloy(entry.entry);
      const facts = factsFor(Object.keys(composition), { prices, pairs });
      return {
        ...entry,
        composition,
        quantities: valuesOf(composition, facts),
        phase: phaseOf(composition, facts),
      };
    });
}
