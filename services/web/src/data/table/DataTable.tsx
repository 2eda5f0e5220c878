import { useVirtualizer } from '@tanstack/react-virtual';
import { useEffect, useRef } from 'react';
import { Link } from 'wouter';
import { useLeftRow } from '../../frame/wayBack.ts';
import { ColumnHead } from '../../look/candidates/ColumnHead.tsx';
import { useRowKeys } from '../../look/candidates/useRowKeys.ts';
import type { RowsProps } from './rowsProps.ts';
import { tableCsv } from './tableCsv.ts';

const rowHeight = 38;

/**
 * Rows as a table of which only those in sight are drawn. Arrows walk the rows, with Shift they
 * select, Enter opens a row, copying takes the selected rows as CSV.
 */
export function DataTable<Row>(props: RowsProps<Row>) {
  const { caption, columns, rows, total = rows.length, selection, order, direction, onOrder } = props;
  const [first, ...others] = columns;
  const scroll = useRef<HTMLDivElement>(null);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroll.current,
    estimateSize: () => rowHeight,
    overscan: 12,
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: another selection is read from its top
  useEffect(() => {
    if (scroll.current) scroll.current.scrollTop = 0;
  }, [selection, order, direction]);
  useLeftRow(rows.length, (row) => virtual.scrollToIndex(row, { align: 'center' }), props.onEnd);
  const items = virtual.getVirtualItems();
  const keys = useRowKeys({
    selection: `${selection} ${order} ${direction}`,
    rows,
    asCsv: (some) => tableCsv(some, columns),
    firstDrawn: items[0]?.index ?? 0,
    scrollTo: (index) => virtual.scrollToIndex(index),
  });
  if ((items.at(-1)?.index ?? -1) >= rows.length - 20 && props.onEnd) queueMicrotask(props.onEnd);
  if (!first) return null;

  return (
    <>
      <div className="table-scroll" ref={scroll} {...keys.handlers}>
        <table className="candidates data-table" aria-rowcount={total + 1}>
          <caption className="unseen">{caption}</caption>
          <colgroup>
            {columns.map(({ id, width }) => (
              <col key={id} style={{ inlineSize: `${width}rem` }} />
            ))}
          </colgroup>
          <thead>
            <tr aria-rowindex={1}>
              {columns.map((column) => (
                <ColumnHead
                  key={column.id}
                  id={column.id}
                  name={column.name}
                  quantity={{ ...column, decimals: 0 }}
                  order={order}
                  direction={direction}
                  onOrder={onOrder}
                  className={column === first ? 'sticky-first' : column.holds === 'numbers' ? 'number' : ''}
                />
              ))}
            </tr>
          </thead>
          <tbody>
            <Spacer height={items[0]?.start ?? 0} />
            {items.map(({ index }) => {
              const row = rows[index]!;
              return (
                <tr
                  key={props.keyOf(row)}
                  data-index={index}
                  aria-rowindex={index + 2}
                  className={keys.isSelected(index) ? 'candidate candidate-selected' : 'candidate'}
                >
                  <th scope="row" className="sticky-first">
                    <Link
                      href={props.addressOf(row)}
                      data-row={index}
                      tabIndex={keys.reachable === index ? 0 : -1}
                    >
                      {first.cell ? first.cell(row) : first.value(row)}
                    </Link>
                  </th>
                  {others.map(({ id, holds, cell, value }) => (
                    <td key={id} className={holds === 'numbers' ? 'number' : 'data-words'}>
                      {cell ? cell(row) : value(row)}
                    </td>
                  ))}
                </tr>
              );
            })}
            <Spacer height={virtual.getTotalSize() - (items.at(-1)?.end ?? 0)} />
          </tbody>
        </table>
      </div>
      <p className="row small quiet" role="status">
        {keys.selectedCount > 1 ? (
          <>
            {keys.selectedCount} rows selected.
            <button type="button" className="button-plain" onClick={keys.copy}>
              Copy as CSV
            </button>
          </>
        ) : null}
        {keys.copied ? 'Copied.' : null}
      </p>
    </>
  );
}

function Spacer({ height }: { height: number }) {
  return height > 0 ? <tr style={{ blockSize: height }} className="spacer" /> : null;
}
