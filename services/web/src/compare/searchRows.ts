import type { Limit, QuantityView, SearchView, TypicalRanges, Values } from '@tiegel/contract';
import { type ComparisonRow, differenceAmong } from '@tiegel/contract/terms';
import { expressionsOf } from '../alloy/expressionsOf.ts';
import { marginOf } from '../alloy/marginOf.ts';
import { formatNumber } from '../numbers/formatNumber.ts';
import { lookupIn, unitText } from '../server/lookup.ts';
import { limitAsSentence } from '../words/limitAsSentence.ts';

/** What the lines of a search are made of. */
export interface Asked {
  alloys: readonly { values: Values }[];
  quantities: readonly QuantityView[];
  typical: TypicalRanges | null;
  currency: string | undefined;
  /** whose limits and expressions are compared; null for none, and while it is not known */
  search: SearchView | null;
}

/** What the search asked of its candidates: each limit with the value of each alloy, met or not. */
export function limitRows(asked: Asked): ComparisonRow[] {
  const { search, quantities, currency } = asked;
  if (search === null) return [];
  const known = [...quantities, ...search.moreQuantities];
  const lookup = lookupIn(known, search.prices?.currency ?? currency);
  const row = (id: string, limit: Limit, where: string) => ({
    ...{ id, name: limitAsSentence(limit, lookup) + where, symbol: '', unit: '' },
    ...limited(limit, asked, known.find((one) => one.id === limit.quantity)?.decimals ?? 3),
    numeric: true,
  });
  const { limits, keptOnly = [] } = search.specification;
  return [
    ...limits.map((limit, place) => row(`limit-${place}`, limit, '')),
    ...keptOnly.map((limit, place) => row(`kept-${place}`, limit, ', applied to the kept ones only')),
  ];
}

function limited(limit: Limit, { alloys, typical }: Asked, decimals: number) {
  const cells = alloys.map(({ values }) => {
    const value = values[limit.quantity];
    // What cannot be computed here is neither met nor not; what has no value fails.
    const met = value === undefined ? {} : { met: marginOf(limit, value).met };
    return { value: value ?? null, text: formatNumber(value, decimals), ...met };
  });
  const difference = differenceAmong(
    cells.map(({ value }) => value),
    typical?.[limit.quantity] ?? null,
  );
  const parted = cells.some(({ met }) => met === true) && cells.some(({ met }) => met === false);
  // However near the values lie: on one side of a limit an alloy is a candidate, on the other none.
  const small = difference === 'none' || difference === 'little';
  return { cells, difference: parted && small ? ('unlike' as const) : difference };
}

/** The search's own figures of merit, with their formulas. */
export function expressionRows({ search, alloys, currency }: Asked): ComparisonRow[] {
  if (search === null) return [];
  return expressionsOf(search).map(({ id, notation, unit, decimals }) => {
    const values = alloys.map((alloy) => alloy.values[id] ?? null);
    return {
      ...{ id: `expression-${id}`, name: notation, symbol: '', numeric: true },
      unit: unitText(unit, search.prices?.currency ?? currency),
      cells: values.map((value) => ({ value, text: formatNumber(value, decimals) })),
      difference: differenceAmong(values, null),
    };
  });
}
