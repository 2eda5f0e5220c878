import { useMutation, useQueryClient } from '@tanstack/react-query';
import { Link } from 'wouter';
import { FaultList } from '../../frame/FaultList.tsx';
import { request } from '../../server/request.ts';
import type { PricesView } from '../../server/types.ts';

/** Which prices hold, whether they are invented, and how to put a list of one's own in their place. */
export function PriceNote({ prices }: { prices: PricesView }) {
  const client = useQueryClient();
  const refresh = () =>
    Promise.all(['prices', 'elements', 'size'].map((key) => client.invalidateQueries({ queryKey: [key] })));
  const takeBack = useMutation({
    mutationFn: () => request('/prices', { method: 'DELETE' }),
    onSuccess: refresh,
  });
  return (
    <div className="price-note">
      {prices?.invented ? (
        <p className="note note-warning">
          The prices are <b>invented</b> for the demonstration ({prices.currency} per kg, list of{' '}
          {prices.date}). Put your own list in their place before you read anything into a cost.
        </p>
      ) : (
        <p className="quiet">
          {prices
            ? `Prices: your list, ${prices.currency} per kg, newest entry ${prices.date}.`
            : 'There is no price list: cost has no value, and a search cannot limit or rank by it.'}
        </p>
      )}
      <details>
        <summary>Use your own prices</summary>
        <p className="read">
          A price here is that of the pure element, per kg: not of a master alloy, of a purity, of what is
          lost in melting. What becomes of each row of your list is shown before it is stored; this form stays
          as it is meanwhile.
        </p>
        <p className="row">
          <Link href="/data/imports/new?kind=prices">Bring in a price list</Link>
          <Link href="/data/prices">Prices in force</Link>
          {prices && !prices.invented ? (
            <button type="button" onClick={() => takeBack.mutate()}>
              Go back to the demonstration prices
            </button>
          ) : null}
        </p>
        <FaultList error={takeBack.error} what="Your price list still holds." />
      </details>
    </div>
  );
}
