import { useQuery } from '@tanstack/react-query';
import { elementsQuery, pricesQuery, quantitiesQuery } from '../server/queries.ts';

/** The data that the form offers: elements, quantities, prices; null until all are there. */
export function useAskData() {
  const elements = useQuery(elementsQuery);
  const quantities = useQuery(quantitiesQuery);
  const prices = useQuery(pricesQuery);
  const error = elements.error ?? quantities.error ?? prices.error;
  const data =
    elements.data && quantities.data && prices.data !== undefined
      ? { elements: elements.data, quantities: quantities.data, prices: prices.data }
      : null;
  const again = () => {
    for (const query of [elements, quantities, prices]) if (query.error) void query.refetch();
  };
  return { data, error, again };
}
