import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { Failed } from '../../frame/Failed.tsx';
import { useTitle } from '../../frame/useTitle.ts';
import { Waiting } from '../../frame/Waiting.tsx';
import { formatCount } from '../../numbers/formatNumber.ts';
import { elementsQuery, pricesQuery } from '../../server/queries.ts';
import { columnsQuery } from '../dataQueries.ts';
import { SearchField } from '../SearchField.tsx';
import { DataRows } from '../table/DataRows.tsx';
import { useAddress } from '../useAddress.ts';
import { useOrder } from '../useOrder.ts';
import { ColumnSources } from './ColumnSources.tsx';
import { elementColumns } from './elementColumns.tsx';
import { matchingElements } from './matchingElements.ts';

/** Every element with its values: searched, sorted, each value with its unit and source. */
export function ElementsView() {
  useTitle('Elements');
  const [address, change] = useAddress();
  const elements = useQuery(elementsQuery);
  const own = useQuery(columnsQuery);
  const prices = useQuery(pricesQuery);
  const order = useOrder('atomicNumber');
  const text = address.get('text') ?? '';
  const shown = useMemo(() => matchingElements(elements.data ?? [], text), [elements.data, text]);
  const columns = useMemo(
    () => elementColumns(own.data ?? [], prices.data?.currency),
    [own.data, prices.data],
  );
  if (elements.error && !elements.data)
    return <Failed error={elements.error} what="The elements" onRetry={() => void elements.refetch()} />;
  if (!elements.data) return <Waiting what="Fetching the elements" />;
  return (
    <section className="column" aria-labelledby="elements-head">
      <h2 id="elements-head">Elements</h2>
      <div className="row data-tools">
        <SearchField
          label="Search"
          value={text}
          placeholder="Fe, iron, lanthanide, volatile …"
          width={30}
          onChange={(next) => change({ text: next })}
        />
        <span className="quiet" role="status">
          {shown.length === elements.data.length
            ? `${formatCount(shown.length)} elements have data here.`
            : `${formatCount(shown.length)} of ${formatCount(elements.data.length)} elements.`}
        </span>
      </div>
      {own.error ? (
        <p className="note" role="status">
          Columns of your own are missing in this table: {own.error.message}
        </p>
      ) : null}
      {shown.length === 0 ? (
        <p className="note row" role="status">
          No element fits “{text}”. Write a symbol, part of a name, a family or a hazard.
          <button type="button" onClick={() => change({ text: null })}>
            Show all elements
          </button>
        </p>
      ) : (
        <DataRows
          caption="Elements"
          columns={columns}
          rows={shown}
          addressOf={({ symbol }) => `/data/elements/${symbol}`}
          keyOf={({ symbol }) => symbol}
          selection={text}
          {...order}
          onCard={6}
        />
      )}
      {prices.data?.invented ? (
        <p className="note note-warning">
          The prices are <b>invented</b> for the demonstration.
        </p>
      ) : null}
      <ColumnSources own={own.data ?? []} />
    </section>
  );
}
