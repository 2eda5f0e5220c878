import { type KeyboardEvent, type PointerEvent, useState } from 'react';
import { formatCount, formatNumber } from '../numbers/formatNumber.ts';
import { shareInWords } from '../numbers/shareInWords.ts';
import { Axis, axisRoom } from './Axis.tsx';
import { linearScale, type Scale } from './linearScale.ts';
import { niceTicks } from './niceTicks.ts';
import './plot.css';
import { PlotSvg } from './PlotSvg.tsx';
import { useWidth } from './useWidth.ts';

/** One set of values on the common axis: how many of its `total` lie in each bin. */
export interface HistogramRow {
  name: string;
  counts: readonly number[];
  total: number;
  /** whether the total was drawn of more: a bar's share is then told with its 95 % interval */
  sampled: boolean;
  /** how it is filled; rows are told apart by place and name, too */
  tone: 'whole' | 'part' | 'chosen';
}

/** A place on the axis that means something, as the edge of a limit; `keeps` is the side that passes. */
export interface HistogramMark {
  value: number;
  label: string;
  keeps?: 'above' | 'below';
}

interface HistogramProps {
  /** what a listener is told the figure is */
  label: string;
  /** one more than there are counts in a row, rising */
  edges: readonly number[];
  rows: readonly HistogramRow[];
  marks?: readonly HistogramMark[];
  /** lines kept free for names of marks, where figures beside it have more than this one */
  markLines?: number;
  /** title of the axis with unit: see axisTitle */
  title: string;
  /** unit for values that are read out; '' for a plain number */
  unit: string;
  /** height of each row, px */
  rowHeight?: number;
}

const room = { ...axisRoom, left: 8, top: 8, bottom: 44 };
const nameHeight = 24;
const markHeight = 16;

/**
 * Histograms of the same quantity, one under another on one axis, each as high as its own fullest
 * bin. Pointer and arrow keys read the bins out.
 */
export function Histogram({
  label,
  edges,
  rows,
  marks = [],
  markLines = marks.length,
  title,
  unit,
  rowHeight = 64,
}: HistogramProps) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const [bin, setBin] = useState<number | null>(null);
  const last = edges.length - 2;
  const scale = linearScale(edges[0]!, edges.at(-1)!, room.left, Math.max(room.left + 1, width - room.right));
  const pitch = rowHeight + nameHeight;
  const top = room.top + Math.max(marks.length, markLines) * markHeight;
  const height = top + rows.length * pitch;

  const onKeyDown = (event: KeyboardEvent) => {
    const at = bin ?? -1;
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: last }[event.key];
    if (event.key === 'Escape') setBin(null);
    else if (to !== undefined) setBin(Math.max(0, Math.min(last, to)));
    else return;
    event.preventDefault();
  };
  const onPointerMove = (event: PointerEvent) => {
    const value = scale.valueAt(event.clientX - ref.current!.getBoundingClientRect().x);
    const at = edges.findIndex((edge) => edge > value) - 1;
    setBin(at < 0 ? null : at);
  };
  const { decimals } = niceTicks(0, edges[1]! - edges[0]!, 5);
  const valueText = (value: number) => formatNumber(value, Math.min(decimals, 4));
  const readoutOf = (at: number) => {
    const shares = rows.map(
      ({ name, counts, total, sampled }) =>
        `${shareInWords(counts[at]!, total, !sampled)} of ${lowerFirst(name)}`,
    );
    return `${valueText(edges[at]!)} to ${valueText(edges[at + 1]!)}${unit === '' ? '' : ` ${unit}`}: ${shares.join(', ')}`;
  };

  return (
    <div className="histogram">
      <div
        ref={ref}
        className="plot-stage"
        role="slider"
        aria-label={`${label}, bar`}
        aria-valuemin={0}
        aria-valuemax={last}
        aria-valuenow={bin ?? 0}
        aria-valuetext={bin === null ? 'no bar' : readoutOf(bin)}
        tabIndex={0}
        onKeyDown={onKeyDown}
        onPointerMove={onPointerMove}
        onPointerLeave={() => setBin(null)}
      >
        <PlotSvg width={width} height={height + room.bottom}>
          {rows.map((row, place) => (
            <Bars
              key={row.name}
              row={row}
              edges={edges}
              scale={scale}
              top={top + place * pitch}
              height={rowHeight}
              lit={bin}
            />
          ))}
          {marks.map((mark, place) => (
            <Mark
              key={mark.label}
              mark={mark}
              scale={scale}
              labelTop={room.top + place * markHeight}
              top={top}
              bottom={height}
            />
          ))}
          {rows.map(({ name, total }, place) => (
            <text key={name} x={scale.start} y={top + place * pitch + 16} className="bars-name">
              {name} <tspan className="bars-count">{formatCount(total)}</tspan>
            </text>
          ))}
          <Axis side="bottom" scale={scale} at={height} title={title} />
        </PlotSvg>
      </div>
      <p className="plot-readout small" aria-hidden="true">
        {bin === null ? null : readoutOf(bin)}
      </p>
    </div>
  );
}

interface BarsProps {
  row: HistogramRow;
  edges: readonly number[];
  scale: Scale;
  top: number;
  height: number;
  lit: number | null;
}

function Bars({ row: { counts, tone }, edges, scale, top, height, lit }: BarsProps) {
  const most = Math.max(1, ...counts);
  const foot = top + nameHeight + height;
  return (
    <g className={`bars bars-${tone}`}>
      {counts.map((count, bin) => {
        const [left, right] = [scale.at(edges[bin]!), scale.at(edges[bin + 1]!)];
        // Something is never drawn as nothing.
        const tall = count === 0 ? 0 : Math.max(1, (count / most) * height);
        return (
          <rect
            key={edges[bin]}
            x={left}
            y={foot - tall}
            width={Math.max(0.5, right - left - (right - left > 4 ? 1 : 0))}
            height={tall}
            className={lit === bin ? 'bar bar-lit' : 'bar'}
          />
        );
      })}
      <line x1={scale.start} x2={scale.end} y1={foot} y2={foot} className="axis-line" />
    </g>
  );
}

interface MarkProps {
  mark: HistogramMark;
  scale: Scale;
  /** where the label stands, above the rows */
  labelTop: number;
  top: number;
  bottom: number;
}

function Mark({ mark, scale, labelTop, top, bottom }: MarkProps) {
  const { value, label, keeps } = mark;
  if (value < scale.from || value > scale.to) return null;
  const x = scale.at(value);
  const [start, end] = keeps === 'above' ? [scale.start, x] : [x, scale.end];
  const rightHalf = x > (scale.start + scale.end) / 2;
  return (
    <g className="mark">
      {keeps ? (
        <rect x={start} y={top} width={end - start} height={bottom - top} className="mark-outside" />
      ) : null}
      <line x1={x} x2={x} y1={labelTop} y2={bottom} className="mark-line" />
      <text
        x={x + (rightHalf ? -5 : 5)}
        y={labelTop + 11}
        textAnchor={rightHalf ? 'end' : 'start'}
        className="mark-label"
      >
        {label}
      </text>
    </g>
  );
}

/** The name of a row inside a sentence. */
function lowerFirst(text: string): string {
  return text[0]!.toLowerCase() + text.slice(1);
}
