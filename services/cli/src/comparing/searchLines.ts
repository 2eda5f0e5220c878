import type { Limit, SearchView, TypicalRanges, Values } from '@tiegel/contract';
import { type ComparisonGroup, limitInWords, searchGroups } from '@tiegel/contract/terms';
import { type Quantity, quantities } from '@tiegel/screening';
import { unitOf } from '../output/quantityColumn.ts';

/** What a search asks of alloys, line by line, in the words of the terminal. */
export function searchLines(view: SearchView, { alloys, typical, written }: Told): ComparisonGroup[] {
  const known = [...quantities, ...view.moreQuantities];
  const unitAs = (unit: string) => unitOf({ unit }, view.prices);
  const lookup = (id: string) => {
    const { name = id, unit = '' }: Partial<Pick<Quantity, 'name' | 'unit'>> =
      known.find((one) => one.id === id) ?? {};
    return { name, unit: unitAs(unit) };
  };
  return searchGroups({
    ...{ alloys, quantities, typical, search: view, written, unitAs },
    limitAs: (limit: Limit) => {
      const words = limitInWords(limit, lookup);
      // An expression is called by its id, which stays as it was typed.
      const asTyped = lookup(limit.quantity).name === limit.quantity;
      return asTyped ? words : words.charAt(0).toUpperCase() + words.slice(1);
    },
  });
}

interface Told {
  alloys: readonly { values: Values }[];
  typical: TypicalRanges;
  written: (value: number | null, decimals: number) => string;
}
