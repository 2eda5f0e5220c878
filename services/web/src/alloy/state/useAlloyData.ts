import { useQuery } from '@tanstack/react-query';
import type { PairView, QuantityView } from '@tiegel/contract';
import { elementsQuery, pairsQuery, pricesQuery, quantitiesQuery } from '../../server/queries.ts';
import type { ElementView, PricesView } from '../../server/types.ts';

interface AlloyData {
  elements: readonly ElementView[];
  pairs: readonly PairView[];
  quantities: readonly QuantityView[];
  prices: PricesView;
}

/** What any alloy is computed from; null until all of it is there. */
export function useAlloyData(): { data: AlloyData | null; error: Error | null; again: () => void } {
  const elements = useQuery(elementsQuery);
  const pairs = useQuery(pairsQuery);
  const quantities = useQuery(quantitiesQuery);
  const prices = useQuery(pricesQuery);
  const queries = [elements, pairs, quantities, prices];
  const failed = queries.find(({ error, data }) => error && data === undefined);
  const data =
    elements.data && pairs.data && quantities.data && prices.data !== undefined
      ? { elements: elements.data, pairs: pairs.data, quantities: quantities.data, prices: prices.data }
      : null;
  return { data, error: failed?.error ?? null, again: () => void failed?.refetch() };
}
