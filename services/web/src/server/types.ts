import type { QuantityView, SearchSpecification } from '@tiegel/contract';
import type { ElementRecord, PriceList } from '@tiegel/elements';

/** An element as GET /elements tells it: every column by its id, null where a value is unknown. */
export type ElementView = ElementRecord;

/** What tables and plots need of a quantity; figures of merit of one's own and late quantities have no more. */
export type ShownQuantity = Pick<QuantityView, 'id' | 'name' | 'symbol' | 'unit' | 'meaning' | 'decimals'>;

export type PricesView = PriceList | null;

export interface Demonstration {
  story: string;
  cautions: string[];
  specification: Partial<SearchSpecification>;
}
