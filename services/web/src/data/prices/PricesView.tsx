import { useQuery } from '@tanstack/react-query';
import { elementOf } from '@tiegel/elements';
import { Link } from 'wouter';
import { Failed } from '../../frame/Failed.tsx';
import { useTitle } from '../../frame/useTitle.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import { pricesQuery } from '../../server/queries.ts';
import type { PricesView as Prices } from '../../server/types.ts';
import { ImportsInForce } from '../imports/ImportsInForce.tsx';
import { SearchField } from '../SearchField.tsx';
import { DataRows } from '../table/DataRows.tsx';
import type { TableColumn } from '../table/tableColumn.ts';
import { useAddress } from '../useAddress.ts';
import { useOrder } from '../useOrder.ts';

interface PriceRow {
  symbol: string;
  name: string;
  pricePerKilogram: number;
  date: string;
  source: string;
}

/** The price list in force; the demonstration list says that it is invented. */
export function PricesView() {
  useTitle('Prices');
  const { data: prices, error, refetch } = useQuery(pricesQuery);
  if (error && prices === undefined)
    return <Failed error={error} what="The price list" onRetry={() => void refetch()} />;
  if (prices === undefined) return <Waiting what="Fetching the prices" />;
  return (
    <section className="column" aria-labelledby="prices-head">
      <h2 id="prices-head">Prices</h2>
      {prices === null ? (
        <p className="read">
          No price list is in force: cost has no value, and a search cannot limit or rank by it.
        </p>
      ) : prices.invented ? (
        <p className="note note-warning">
          These prices are <b>invented</b> for the demonstration ({prices.currency} per kg, list of{' '}
          {prices.date}). Bring in your own before you read anything into a cost.
        </p>
      ) : (
        <p className="read">
          Your list: {prices.currency} per kg, newest entry {prices.date}.
        </p>
      )}
      <ImportsInForce kind="prices" />
      {prices ? <PriceTable prices={prices} /> : null}
      <p className="small quiet read-small">
        What a price here is not: that of a master alloy, of a purity, of what is lost in melting. Those of
        raw materials stand with <Link href="/data/materials">the materials</Link>.
      </p>
    </section>
  );
}

function PriceTable({ prices }: { prices: NonNullable<Prices> }) {
  const [address, change] = useAddress();
  const order = useOrder('symbol');
  const text = address.get('text') ?? '';
  const rows = rowsOf(prices).filter(({ symbol, name, source }) =>
    `${symbol} ${name} ${source}`.toLowerCase().includes(text.trim().toLowerCase()),
  );
  const words = { symbol: '', unit: '', meaning: '', holds: 'words' } as const;
  const columns: TableColumn<PriceRow>[] = [
    {
      ...{ ...words, id: 'symbol', name: 'Element', width: 12, value: ({ symbol }) => symbol },
      cell: ({ symbol, name }) => (
        <>
          <b className="data-symbol">{symbol}</b> {name}
        </>
      ),
    },
    {
      ...{ ...words, id: 'price', name: 'Price', unit: `${prices.currency}/kg`, holds: 'numbers', width: 9 },
      value: ({ pricePerKilogram }) => pricePerKilogram,
      cell: ({ pricePerKilogram }) => formatNumber(pricePerKilogram, 2),
    },
    { ...words, id: 'date', name: 'Date', width: 9, value: ({ date }) => date },
    { ...words, id: 'source', name: 'Source', width: 22, value: ({ source }) => source },
  ];
  return (
    <>
      <div className="row data-tools">
        <SearchField
          label="Search"
          value={text}
          placeholder="element or source"
          onChange={(next) => change({ text: next })}
        />
        <span className="quiet" role="status">
          {formatCount(rows.length)} of {formatCount(Object.keys(prices.prices).length)} prices.
        </span>
      </div>
      {rows.length === 0 ? (
        <p className="note row" role="status">
          No price fits “{text}”.
          <button type="button" onClick={() => change({ text: null })}>
            Show all prices
          </button>
        </p>
      ) : (
        <div className="data-narrow-table">
          <DataRows
            caption="Prices"
            columns={columns}
            rows={rows}
            addressOf={({ symbol }) => `/data/elements/${symbol}`}
            keyOf={({ symbol }) => symbol}
            selection={text}
            {...order}
            onCard={3}
          />
        </div>
      )}
    </>
  );
}

function rowsOf({ prices }: NonNullable<Prices>): PriceRow[] {
  return Object.entries(prices).map(([symbol, price]) => ({
    ...price,
    symbol,
    name: elementOf(symbol)?.name ?? '',
  }));
}
