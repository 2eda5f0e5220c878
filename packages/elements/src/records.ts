import { type ColumnId, columns } from './data/columns.ts';
import type { Value } from './data/dataTable.ts';
import type { Hazard } from './data/hazards.ts';
import { pairEnthalpies } from './data/pairEnthalpies.ts';
import type { SourceCode } from './data/sources.ts';
import { sourcedValue } from './elementValue.ts';
import { hazardsOf } from './hazardsOf.ts';
import type { PairValue } from './own/pairValues.ts';
import { pairEnthalpyWith } from './pairEnthalpy.ts';
import { type Element, elements } from './periodicTable.ts';
import type { PriceList } from './priceList.ts';

/**
 * All that is known of an element in one flat record: every column by its id in the column's unit,
 * `price` in the list's currency per kg, null where unknown; `sources` holds the code of each value.
 */
export type ElementRecord = Element &
  Record<ColumnId, Value> & {
    price: number | null;
    hazards: readonly Hazard[];
    sources: Record<ColumnId, SourceCode>;
  };

/** The records of all elements with data, by atomic number, priced from the list in force. */
export function elementRecords(prices: PriceList | null): ElementRecord[] {
  return elements.map((element) => {
    const values = columns.map(({ id }) => ({ id, ...sourcedValue(element.symbol, id) }));
    return {
      ...element,
      ...(Object.fromEntries(values.map(({ id, value }) => [id, value])) as Record<ColumnId, Value>),
      price: prices?.prices[element.symbol]?.pricePerKilogram ?? null,
      hazards: hazardsOf(element.symbol),
      sources: Object.fromEntries(values.map(({ id, source }) => [id, source])) as Record<
        ColumnId,
        SourceCode
      >,
    };
  });
}

/** A pair of elements; `mixingEnthalpy` as of pairEnthalpy, kJ/mol. */
export interface PairRecord {
  a: string;
  b: string;
  mixingEnthalpy: number;
}

/** Every pair once, by atomic numbers, values of one's own before the project's. */
export function pairRecords(own: readonly PairValue[] = []): PairRecord[] {
  const enthalpy = pairEnthalpyWith(own);
  return pairEnthalpies.map(([a, b]) => ({ a, b, mixingEnthalpy: enthalpy(a, b)! }));
}
