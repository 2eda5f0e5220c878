import type { Facts } from '@tiegel/contract';
import type { Mixing } from '@tiegel/contract/terms';

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
