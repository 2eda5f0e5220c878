import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { useRef } from 'react';
import { Link } from 'wouter';
import { useLeftRow } from '../../frame/wayBack.ts';
import { Notation } from '../../words/Notation.tsx';
import type { RowsProps } from './rowsProps.ts';

/** Rows on a small screen, a card for each, with the column that they are sorted by among what it tells. */
export function DataCards<Row>(props: RowsProps<Row>) {
  const { rows, columns, order, direction, onOrder, onCard } = props;
  const [first, ...others] = columns;
  const list = useRef<HTMLOListElement>(null);
  const virtual = useWindowVirtualizer({
    count: rows.length,
    estimateSize: () => 110,
    overscan: 6,
    scrollMargin: list.current?.offsetTop ?? 0,
  });
  useLeftRow(rows.length, (row) => virtual.scrollToIndex(row, { align: 'center' }), props.onEnd);
  const items = virtual.getVirtualItems();
  if ((items.at(-1)?.index ?? -1) >= rows.length - 10 && props.onEnd) queueMicrotask(props.onEnd);
  if (!first) return null;
  const offset = (items[0]?.start ?? 0) - virtual.options.scrollMargin;
  const told = others.filter(({ id }, at) => at < onCard || id === order);

  return (
    <>
      {onOrder ? (
        <p className="row">
          <label className="row">
            In the order of
            <select value={order} onChange={(event) => onOrder(event.target.value, direction)}>
              {order === '' ? <option value="">the list</option> : null}
              {columns.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
          {order === '' ? null : (
            <button type="button" onClick={() => onOrder(order, direction === 'asc' ? 'desc' : 'asc')}>
              {direction === 'asc' ? 'Smallest first ↑' : 'Largest first ↓'}
            </button>
          )}
        </p>
      ) : null}
      <ol
        ref={list}
        className="candidate-cards"
        aria-label={props.caption}
        style={{ blockSize: virtual.getTotalSize() }}
      >
        <li aria-hidden="true" style={{ blockSize: Math.max(0, offset) }} />
        {items.map(({ index }) => {
          const row = rows[index]!;
          return (
            <li
              key={props.keyOf(row)}
              ref={virtual.measureElement}
              data-index={index}
              className="candidate-card data-card"
            >
              <Link href={props.addressOf(row)} data-row={index}>
                {first.cell ? first.cell(row) : first.value(row)}
              </Link>
              <dl>
                {told
                  .filter(({ holds, value }) => holds === 'numbers' || value(row) !== null)
                  .map(({ id, name, symbol, unit, holds, cell, value }) => (
                    <div key={id} className={holds === 'words' ? 'data-card-words' : undefined}>
                      <dt title={name}>
                        {symbol === '' || holds === 'words' ? name : <Notation text={symbol} />}
                      </dt>
                      <dd>
                        {cell ? cell(row) : value(row)}{' '}
                        {value(row) === null ? null : <span className="quiet">{unit}</span>}
                      </dd>
                    </div>
                  ))}
              </dl>
            </li>
          );
        })}
      </ol>
    </>
  );
}
