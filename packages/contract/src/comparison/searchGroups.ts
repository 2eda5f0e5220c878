import type { Values } from '../alloy/amounts.ts';
import type { TypicalRanges } from '../alloy/typicalRanges.ts';
import type { QuantityView } from '../quantity.ts';
import { expressionsOf } from '../search/expressionsOf.ts';
import type { SearchView } from '../search/search.ts';
import { marginOf } from '../specification/marginOf.ts';
import type { Limit } from '../specification/specification.ts';
import type { ComparisonGroup, ComparisonRow } from './comparison.ts';
import { differenceAmong } from './differenceAmong.ts';

/** What the lines of a search are made of, in the words of who shows them. */
export interface Asked {
  /** a value that is not there cannot be computed here, one that is null does not exist */
  alloys: readonly { values: Values }[];
  quantities: readonly Pick<QuantityView, 'id' | 'decimals'>[];
  typical: TypicalRanges | null;
  /** whose limits and expressions are compared; null for none, and while it is not known */
  search: Pick<SearchView, 'specification' | 'moreQuantities'> | null;
  /** a limit as a line of its own */
  limitAs: (limit: Limit) => string;
  unitAs: (unit: string) => string;
  written: (value: number | null, decimals: number) => string;
}

/** What a search asked, for every alloy: its limits and its own figures of merit. */
export function searchGroups(asked: Asked): ComparisonGroup[] {
  return [
    { head: 'Limits of the search', rows: limitRows(asked) },
    { head: 'Expressions of the search', rows: expressionRows(asked) },
  ];
}

/** Each limit with the value of each alloy, met or not. */
function limitRows(asked: Asked): ComparisonRow[] {
  const { search, quantities, limitAs } = asked;
  if (search === null) return [];
  const known = [...quantities, ...search.moreQuantities];
  const row = (id: string, limit: Limit, where: string) => ({
    ...{ id, name: limitAs(limit) + where, symbol: '', unit: '' },
    ...limited(limit, asked, known.find((one) => one.id === limit.quantity)?.decimals ?? 3),
    numeric: true,
  });
  const { limits, keptOnly = [] } = search.specification;
  return [
    ...limits.map((limit, place) => row(`limit-${place}`, limit, '')),
    ...keptOnly.map((limit, place) => row(`kept-${place}`, limit, ', applied to the kept ones only')),
  ];
}

function limited(limit: Limit, { alloys, typical, written }: Asked, decimals: number) {
  const cells = alloys.map(({ values }) => {
    const value = values[limit.quantity];
    // What cannot be computed here is neither met nor not; what has no value fails.
    const met = value === undefined ? {} : { met: marginOf(limit, value).met };
    return { value: value ?? null, text: written(value ?? null, decimals), ...met };
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
function expressionRows({ search, alloys, unitAs, written }: Asked): ComparisonRow[] {
  if (search === null) return [];
  return expressionsOf(search).map(({ id, notation, unit, decimals }) => {
    const values = alloys.map((alloy) => alloy.values[id] ?? null);
    return {
      ...{ id: `expression-${id}`, name: notation, symbol: '', numeric: true },
      unit: unitAs(unit),
      cells: values.map((value) => ({ value, text: written(value, decimals) })),
      difference: differenceAmong(values, null),
    };
  });
}
