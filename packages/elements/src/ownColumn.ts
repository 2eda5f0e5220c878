import type { Facts } from '@tiegel/contract';

/** How a value of elements becomes one of an alloy: weighted by atoms, by mass or by volume. */
export const mixings = ['mole', 'mass', 'volume'] as const;
export type Mixing = (typeof mixings)[number];

/** A column of element data of somebody's own. */
export interface OwnColumn {
  /** Name in facts, formulas, columns and exports, made of `name`. */
  id: string;
  name: string;
  /** As printed; '' for a plain number. */
  unit: string;
  mixing: Mixing;
  /** by symbol; an element that the column does not name has no value */
  values: Record<string, number>;
}

/** Facts with a column of one's own beside the others. */
export function withOwnColumn(facts: Facts, { id, values }: OwnColumn): Facts {
  return {
    ...facts,
    columns: { ...facts.columns, [id]: facts.symbols.map((symbol) => values[symbol] ?? null) },
  };
}
