import { useVirtualizer } from '@tanstack/react-virtual';
import type { Candidate } from '@tiegel/contract';
import { formatComposition } from '@tiegel/elements';
import { type CSSProperties, useEffect, useMemo, useRef } from 'react';
import { useLeftRow } from '../../frame/wayBack.ts';
import type { ShownQuantity } from '../../server/types.ts';
import type { Marks } from '../marks/useMarks.ts';
import { CandidateRow } from './CandidateRow.tsx';
import { ColumnHead } from './ColumnHead.tsx';
import { rowsAsCsv } from './rowsAsCsv.ts';
import { useRowKeys } from './useRowKeys.ts';

const rowHeight = 38;

interface CandidateTableProps {
  searchId: string;
  /** tells one selection and order of rows from another */
  selection: string;
  rows: readonly Candidate[];
  /** number of the first row in the whole selection, from 0 */
  firstRow: number;
  /** rows of the whole selection; null where that is not known */
  total: number | null;
  columns: readonly ShownQuantity[];
  currency: string | undefined;
  shareDecimals: number;
  /** greatest number of elements in a composition */
  components: number;
  order: string;
  direction: 'asc' | 'desc';
  marks: Marks;
  onOrder: (order: string, direction: 'asc' | 'desc') => void;
  /** called when the rows that are there come to their end */
  onEnd: () => void;
}

/**
 * The candidates as a table of which only the visible rows are drawn. Arrows walk the rows, with
 * Shift they select, Space marks, Enter opens a candidate, copying takes the selected rows as CSV.
 */
export function CandidateTable(props: CandidateTableProps) {
  const {
    searchId,
    selection,
    rows,
    firstRow,
    total,
    columns,
    currency,
    shareDecimals,
    components,
    order,
    direction,
    marks: { marked, turn },
  } = props;
  const isMarked = useMemo(() => new Set(marked), [marked]);
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
  }, [selection]);
  useLeftRow(rows.length, (row) => virtual.scrollToIndex(row, { align: 'center' }), props.onEnd);
  const items = virtual.getVirtualItems();
  const [first, last] = [items[0]?.index ?? 0, items.at(-1)?.index ?? -1];
  const keys = useRowKeys({
    selection,
    rows,
    asCsv: (some) => rowsAsCsv(some, columns),
    onSpace: (some) => turn(textsOf(some)),
    firstDrawn: first,
    scrollTo: (index) => virtual.scrollToIndex(index),
  });
  if (last >= rows.length - 20) queueMicrotask(props.onEnd);

  return (
    <>
      <div className="table-scroll" ref={scroll} {...keys.handlers}>
        <table className="candidates" aria-rowcount={total === null ? -1 : total + 1}>
          <caption className="unseen">Candidates</caption>
          <colgroup>
            <col className="col-rank" />
            <col className="col-composition" style={compositionWidths(components, shareDecimals)} />
            {columns.map(({ id }) => (
              <col key={id} className="col-quantity" />
            ))}
          </colgroup>
          <thead>
            <tr aria-rowindex={1}>
              <ColumnHead id="rank" name="Rank" order={order} direction={direction} onOrder={props.onOrder} />
              <th scope="col" className="sticky-composition">
                Composition<span className="head-unit">at.%</span>
              </th>
              {columns.map((quantity) => (
                <ColumnHead
                  key={quantity.id}
                  id={quantity.id}
                  name={quantity.name}
                  quantity={quantity}
                  currency={currency}
                  order={order}
                  direction={direction}
                  onOrder={props.onOrder}
                />
              ))}
            </tr>
          </thead>
          <tbody>
            <Spacer height={items[0]?.start ?? 0} />
            {items.map(({ index }) => (
              <CandidateRow
                key={index}
                searchId={searchId}
                candidate={rows[index]!}
                index={index}
                rowNumber={firstRow + index + 2}
                columns={columns}
                shareDecimals={shareDecimals}
                reachable={keys.reachable === index}
                selected={keys.isSelected(index)}
                marked={isMarked.has(formatComposition(rows[index]!.composition))}
                onMark={turn}
              />
            ))}
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
            <button type="button" className="button-plain" onClick={() => turn(textsOf(keys.selected))}>
              {textsOf(keys.selected).every((text) => isMarked.has(text))
                ? 'Take their marks away'
                : 'Mark them'}
            </button>
          </>
        ) : null}
        {keys.copied ? 'Copied.' : null}
      </p>
    </>
  );
}

const textsOf = (rows: readonly Candidate[]): string[] =>
  rows.map(({ composition }) => formatComposition(composition));

/** Shares beyond this go to a second line, for which a row has room; on a screen with less width, beyond the other. */
const sharesInLine = { usual: 6, less: 3 };

/** Room for a bar and the shares of the largest composition. The sheet takes the one that suits the screen. */
function compositionWidths(components: number, decimals: number): CSSProperties {
  const widthOf = (inLine: number) => `${9 + inLine * (decimals > 0 ? 4.6 : 3.5)}rem`;
  return {
    '--usual': widthOf(Math.min(components, sharesInLine.usual)),
    '--less': widthOf(Math.min(components, Math.max(sharesInLine.less, Math.ceil(components / 2)))),
  } as CSSProperties;
}

function Spacer({ height }: { height: number }) {
  return height > 0 ? <tr style={{ blockSize: height }} className="spacer" /> : null;
}
