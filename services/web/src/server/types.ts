import type { SearchSpecification } from '@tiegel/contract';
import type { ElementRecord, PriceList } from '@tiegel/elements';
import type { Quantity } from '@tiegel/screening';

/** An element as GET /elements tells it: every column by its id, null where a value is unknown. */
export type ElementView = ElementRecord;

/** A quantity as GET /quantities tells it: its definition, and what the formula reads in place of its tree. */
export type QuantityView = Omit<Quantity, 'formula'> & {
  /** ids of the columns of elements and of pairs, and names of the conditions */
  needs: { elements: string[]; pairs: string[]; conditions: string[] };
};

/** A quantity of kept candidates only, as GET /late-quantities tells it. */
export type LateQuantityView = Omit<QuantityView, 'range' | 'needs'>;

/** What tables and plots need of a quantity; figures of merit of one's own and late quantities have no more. */
export type ShownQuantity = Pick<QuantityView, 'id' | 'name' | 'symbol' | 'unit' | 'meaning' | 'decimals'>;

export type PricesView = PriceList | null;

export interface Demonstration {
  story: string;
  cautions: string[];
  specification: Partial<SearchSpecification>;
}
