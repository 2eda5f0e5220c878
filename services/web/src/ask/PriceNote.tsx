import { useMutation, useQueryClient } from '@tanstack/react-query';
import { type ChangeEvent, useRef } from 'react';
import { Link } from 'wouter';
import { FaultList } from '../frame/FaultList.tsx';
import { request } from '../server/request.ts';
import type { PricesView } from '../server/types.ts';

/** Which prices hold, whether they are invented, and how to put a list of one's own in their place. */
export function PriceNote({ prices }: { prices: PricesView }) {
  const client = useQueryClient();
  const file = useRef<HTMLInputElement>(null);
  const refresh = () =>
    Promise.all(['prices', 'elements', 'size'].map((key) => client.invalidateQueries({ queryKey: [key] })));
  const replace = useMutation({
    mutationFn: async (list: File) =>
      request('/prices', { method: 'PUT', body: await list.text(), type: 'text/csv' }),
    onSuccess: refresh,
  });
  const takeBack = useMutation({
    mutationFn: () => request('/prices', { method: 'DELETE' }),
    onSuccess: refresh,
  });
  const onFile = (event: ChangeEvent<HTMLInputElement>) => {
    const [list] = event.target.files ?? [];
    if (list) replace.mutate(list);
    event.target.value = '';
  };

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
          A CSV file with the columns symbol, pricePerKilogram, currency, date, source, one currency
          throughout. What a price here is not: that of a master alloy, of a purity, of what is lost in
          melting. <Link href="/data/imports/new?kind=prices">See what becomes of each row before</Link>, or{' '}
          <Link href="/data/prices">all prices in force</Link>.
        </p>
        <p className="row">
          <button type="button" onClick={() => file.current?.click()}>
            Choose a price list …
          </button>
          <input
            ref={file}
            type="file"
            accept=".csv,text/csv"
            aria-label="Price list"
            onChange={onFile}
            hidden
          />
          {prices && !prices.invented ? (
            <button type="button" onClick={() => takeBack.mutate()}>
              Go back to the demonstration prices
            </button>
          ) : null}
        </p>
        <FaultList
          error={replace.error ?? takeBack.error}
          what="The price list was not taken; the one before still holds."
        />
      </details>
    </div>
  );
}
