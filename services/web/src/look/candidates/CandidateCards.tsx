import { useWindowVirtualizer } from '@tanstack/react-virtual';
import type { Candidate } from '@tiegel/contract';
import { formatComposition } from '@tiegel/elements';
import { useRef } from 'react';
import { Link } from 'wouter';
import { ShareBar } from '../../composition/ShareBar.tsx';
import { Shares } from '../../composition/Shares.tsx';
import { useLeftRow } from '../../frame/wayBack.ts';
import { formatCount, formatNumber } from '../../numbers/formatNumber.ts';
import { unitText } from '../../server/lookup.ts';
import type { ShownQuantity } from '../../server/types.ts';
import { Notation } from '../../words/Notation.tsx';
import { candidateAddress } from '../candidateAddress.ts';
import { MarkBox } from '../marks/MarkBox.tsx';
import type { Marks } from '../marks/useMarks.ts';

const quantitiesOnCard = 6;

interface CandidateCardsProps {
  searchId: string;
  rows: readonly Candidate[];
  columns: readonly ShownQuantity[];
  currency: string | undefined;
  shareDecimals: number;
  marks: Marks;
  onEnd: () => void;
}

/** The candidates on a small screen, a card for each composition. */
export function CandidateCards({
  searchId,
  rows,
  columns,
  currency,
  shareDecimals,
  marks: { marked, turn },
  onEnd,
}: CandidateCardsProps) {
  const list = useRef<HTMLOListElement>(null);
  const virtual = useWindowVirtualizer({
    count: rows.length,
    estimateSize: () => 150,
    overscan: 6,
    scrollMargin: list.current?.offsetTop ?? 0,
  });
  useLeftRow(rows.length, (row) => virtual.scrollToIndex(row, { align: 'center' }), onEnd);
  const items = virtual.getVirtualItems();
  if ((items.at(-1)?.index ?? -1) >= rows.length - 10) queueMicrotask(onEnd);
  const offset = (items[0]?.start ?? 0) - virtual.options.scrollMargin;

  return (
    <ol ref={list} className="candidate-cards" style={{ blockSize: virtual.getTotalSize() }}>
      <li aria-hidden="true" style={{ blockSize: Math.max(0, offset) }} />
      {items.map(({ index }) => {
        const { rank, composition, quantities, front } = rows[index]!;
        return (
          <li key={index} ref={virtual.measureElement} data-index={index} className="candidate-card">
            <p className="row">
              <MarkBox
                composition={composition}
                marked={marked.includes(formatComposition(composition))}
                onMark={turn}
              />
              <span className="quiet">
                {formatCount(rank)}
                {front ? ' ◇ on the Pareto front' : ''}
              </span>
              <Link href={candidateAddress(searchId, composition)} data-row={index}>
                <Shares composition={composition} decimals={shareDecimals} />
              </Link>
            </p>
            <ShareBar composition={composition} />
            <dl>
              {columns.slice(0, quantitiesOnCard).map(({ id, name, symbol, unit, decimals }) => (
                <div key={id}>
                  <dt title={name}>
                    <Notation text={symbol} />
                  </dt>
                  <dd>
                    {formatNumber(quantities[id], decimals)}{' '}
                    <span className="quiet">{unitText(unit, currency)}</span>
                  </dd>
                </div>
              ))}
            </dl>
          </li>
        );
      })}
    </ol>
  );
}
