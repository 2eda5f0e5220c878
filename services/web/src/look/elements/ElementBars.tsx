import type { ElementUse } from '@tiegel/contract';
import { type KeyboardEvent, type PointerEvent, useState } from 'react';
import { formatCount, formatNumber, formatPercent } from '../../numbers/formatNumber.ts';
import { Axis } from '../../plot/Axis.tsx';
import { linearScale, type Scale } from '../../plot/linearScale.ts';
import { PlotSvg } from '../../plot/PlotSvg.tsx';
import { useWidth } from '../../plot/useWidth.ts';
import type { AmountBins } from './amountBins.ts';

const pitch = 40;
const barHeight = 30;
const top = 26;
const bottom = 46;
const gap = 20;

interface At {
  row: number;
  bin: number | null;
}

/**
 * A row for each element: on the left how often it is there, on the right in which amounts, each
 * row as high as its own most frequent amount. Pointer and arrow keys read the bars out.
 */
export function ElementBars({ use, bins }: { use: ElementUse; bins: AmountBins }) {
  const [stage, width] = useWidth<HTMLDivElement>();
  const [at, setAt] = useState<At | null>(null);
  const { elements, meeting } = use;
  const shareEnd = Math.max(120, Math.round(width * 0.32));
  const share = linearScale(0, 100, 34, shareEnd);
  const amount = linearScale(
    -bins.width / 2,
    bins.middles.at(-1)! + bins.width / 2,
    shareEnd + gap,
    Math.max(shareEnd + gap + 1, width - 14),
  );
  const height = top + elements.length * pitch;
  const lastBin = bins.middles.length - 1;

  const onKeyDown = (event: KeyboardEvent) => {
    const row = at?.row ?? -1;
    const bin = at?.bin ?? null;
    const hold = (next: At) => ({ row: Math.max(0, Math.min(elements.length - 1, next.row)), bin: next.bin });
    const to = {
      ArrowDown: hold({ row: row + 1, bin }),
      ArrowUp: hold({ row: row - 1, bin }),
      ArrowRight: hold({ row, bin: bin === null ? 0 : Math.min(lastBin, bin + 1) }),
      ArrowLeft: hold({ row, bin: bin === null || bin === 0 ? null : bin - 1 }),
      Home: hold({ row: 0, bin: null }),
      End: hold({ row: elements.length - 1, bin: null }),
    }[event.key];
    if (!to) return;
    setAt(to);
    event.preventDefault();
  };
  const onPointerMove = (event: PointerEvent) => {
    const box = stage.current!.getBoundingClientRect();
    const row = Math.floor((event.clientY - box.y - top) / pitch);
    if (row < 0 || row >= elements.length) return setAt(null);
    const bin = Math.floor((amount.valueAt(event.clientX - box.x) + bins.width / 2) / bins.width);
    setAt({ row, bin: bin < 0 || bin > lastBin ? null : bin });
  };
  const words = at === null ? '' : wordsOf(use, bins, at);
  return (
    <div>
      <div
        ref={stage}
        className="plot-stage"
        role="slider"
        aria-label="Elements in the candidates. Up and down walk the elements, left and right their amounts"
        aria-valuemin={0}
        aria-valuemax={elements.length - 1}
        aria-valuenow={at?.row ?? 0}
        aria-valuetext={words === '' ? 'no element' : words}
        tabIndex={0}
        onKeyDown={onKeyDown}
        onPointerMove={onPointerMove}
        onPointerLeave={() => setAt(null)}
      >
        <PlotSvg width={width} height={height + bottom}>
          <text x={share.start} y={12} className="bars-name">
            How often
          </text>
          <text x={amount.start} y={12} className="bars-name">
            How much
          </text>
          {elements.map(({ symbol, candidates }, row) => (
            <Row
              key={symbol}
              symbol={symbol}
              percent={(100 * candidates) / meeting}
              label={formatPercent(candidates, meeting)}
              counts={bins.counts.get(symbol)!}
              bins={bins}
              share={share}
              amount={amount}
              foot={top + row * pitch + barHeight}
              lit={at?.row === row ? at.bin : undefined}
            />
          ))}
          <Axis side="bottom" scale={share} at={height} title="Share of candidates (%)" most={3} />
          <Axis side="bottom" scale={amount} at={height} title="Amount (at.%)" />
        </PlotSvg>
      </div>
      <p className="plot-readout small" aria-hidden="true">
        {words}
      </p>
    </div>
  );
}

interface RowProps {
  symbol: string;
  percent: number;
  label: string;
  counts: readonly number[];
  bins: AmountBins;
  share: Scale;
  amount: Scale;
  foot: number;
  /** the bin that is read out, null for the row alone, undefined for none */
  lit: number | null | undefined;
}

function Row({ symbol, percent, label, counts, bins, share, amount, foot, lit }: RowProps) {
  const most = Math.max(1, ...counts);
  const end = share.at(percent);
  const inside = end - share.start > (share.end - share.start) / 2;
  return (
    <g>
      <text x={4} y={foot - 8} className="bars-name">
        {symbol}
      </text>
      <g className="bars-part">
        <rect
          x={share.start}
          y={foot - barHeight + 6}
          width={Math.max(percent > 0 ? 1 : 0, end - share.start)}
          height={barHeight - 10}
          className={lit === null ? 'bar bar-lit' : 'bar'}
        />
      </g>
      <text
        x={inside ? end - 5 : end + 5}
        y={foot - 9}
        textAnchor={inside ? 'end' : 'start'}
        className={inside ? 'bar-value bar-value-inside' : 'bar-value'}
      >
        {label}
      </text>
      <g className="bars-chosen">
        {counts.map((count, bin) => {
          const tall = count === 0 ? 0 : Math.max(1, (count / most) * barHeight);
          const left = amount.at(bins.middles[bin]! - bins.width / 2);
          const wide = amount.at(bins.middles[bin]! + bins.width / 2) - left;
          return (
            <rect
              key={bins.middles[bin]}
              x={left + (wide > 4 ? 0.5 : 0)}
              y={foot - tall}
              width={Math.max(0.5, wide - (wide > 4 ? 1 : 0))}
              height={tall}
              className={lit === bin ? 'bar bar-lit' : 'bar'}
            />
          );
        })}
      </g>
      <line x1={amount.start} x2={amount.end} y1={foot} y2={foot} className="axis-grid" />
    </g>
  );
}

function wordsOf({ elements, meeting }: ElementUse, bins: AmountBins, { row, bin }: At): string {
  const { symbol, candidates } = elements[row]!;
  const often = `${symbol} is in ${formatCount(candidates)} candidates, ${formatPercent(candidates, meeting)}`;
  if (bin === null) return often;
  const count = bins.counts.get(symbol)![bin]!;
  const amount = formatNumber(bins.middles[bin], Number.isInteger(bins.middles[bin]) ? 0 : 1);
  return `${often}; in ${formatCount(count)} of them (${formatPercent(count, candidates)}) around ${amount} at.%`;
}
