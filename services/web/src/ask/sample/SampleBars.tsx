import { useMemo } from 'react';
import { binsOf } from '../../plot/binsOf.ts';
import type { DragRange } from './dragRange.ts';
import './samplePlot.css';

/** Bars of a distribution. */
const bins = 64;
/** Units of the drawing's height; nothing that is there is drawn lower than `lowest`. */
const height = 100;
const lowest = 2.5;

interface SampleBarsProps {
  values: readonly (number | null)[];
  range: DragRange;
  /** which of the compositions are drawn dark */
  chosen: (point: number) => boolean;
  /** what lies outside of these is veiled */
  min?: number | null;
  max?: number | null;
}

/** The distribution of a quantity over the sample, the chosen part of it dark, and what bounds cut off veiled. */
export function SampleBars({ values, range, chosen, min = null, max = null }: SampleBarsProps) {
  const { from, to } = range;
  const all = useMemo(() => binsOf(values, from, to, bins).counts, [values, from, to]);
  const dark = binsOf(
    values.map((value, point) => (chosen(point) ? value : null)),
    from,
    to,
    bins,
  ).counts;
  const most = Math.max(1, ...all);
  const tall = (count: number) => (count === 0 ? 0 : Math.max(lowest, (count / most) * height));
  const at = (value: number) => Math.min(bins, Math.max(0, ((value - from) / (to - from)) * bins));
  const bars = (counts: readonly number[], kind: string) => (
    <path
      className={kind}
      d={counts.map((count, bin) => `M${bin},${height}v${-tall(count)}h0.86v${tall(count)}z`).join('')}
    />
  );
  return (
    <svg
      className="sample-bars"
      viewBox={`0 0 ${bins} ${height}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {bars(all, 'sample-all')}
      {bars(dark, 'sample-chosen')}
      {min === null ? null : <rect className="sample-veil" width={at(min)} height={height} />}
      {max === null ? null : (
        <rect className="sample-veil" x={at(max)} width={bins - at(max)} height={height} />
      )}
    </svg>
  );
}
