import type { SearchView } from '@tiegel/contract';
import { useState } from 'react';
import { ShareBar } from '../composition/ShareBar.tsx';
import { Shares } from '../composition/Shares.tsx';
import { shareDecimals } from '../composition/shareDecimals.ts';
import { formatCount, formatNumber } from '../numbers/formatNumber.ts';
import { Axis, axisRoom } from '../plot/Axis.tsx';
import { linearScale } from '../plot/linearScale.ts';
import { niceExtent } from '../plot/niceTicks.ts';
import '../plot/plot.css';
import { useWidth } from '../plot/useWidth.ts';
import type { ShownQuantity } from '../server/types.ts';
import { scoreOf } from './scoreOf.ts';

const plotHeight = 120;

/** The best composition that was found so far, and how the best became better with the points that were tested. */
export function BestSoFar({
  search,
  quantities,
}: {
  search: SearchView;
  quantities: readonly ShownQuantity[];
}) {
  const { bestSoFar, specification } = search;
  if (bestSoFar === null) {
    return search.counts.points > 0 && specification.keep + specification.keepPerSystem > 0 ? (
      <p className="quiet">No composition passed yet.</p>
    ) : null;
  }
  const { composition, score, improvements } = bestSoFar;
  const { name, title, unit, decimals } = scoreOf(search, quantities);
  const value = `${formatNumber(score, decimals)}${unit === '' ? '' : ` ${unit}`}`;
  const scored = improvements.flatMap(({ points, score: one }) =>
    one === null ? [] : [{ points, score: one }],
  );
  return (
    <section className="best-so-far" aria-labelledby="best-head">
      <h2 id="best-head">Best so far</h2>
      <p className="row">
        <span className="best-composition">
          <ShareBar composition={composition} />
          <Shares composition={composition} decimals={shareDecimals(specification.fractions)} />
        </span>
        <span>
          {name} <b>{value}</b>
        </span>
      </p>
      {scored.length > 1 ? (
        <Improvements search={search} scored={scored} title={title} decimals={decimals} />
      ) : null}
    </section>
  );
}

interface ImprovementsProps {
  search: SearchView;
  scored: readonly { points: number; score: number }[];
  title: string;
  decimals: number;
}

/** A staircase over the points tested: it goes on at the last value until now. */
function Improvements({ search: { progress }, scored, title, decimals }: ImprovementsProps) {
  const [stage, width] = useWidth<HTMLDivElement>();
  const [at, setAt] = useState<number | null>(null);
  const scores = scored.map(({ score }) => score);
  const left = axisRoom.left + 8;
  const x = linearScale(0, progress.total, left, Math.max(left + 1, width - axisRoom.right));
  const y = linearScale(
    ...niceExtent(Math.min(...scores), Math.max(...scores), 4),
    axisRoom.top + plotHeight,
    axisRoom.top,
  );
  const path = scored
    .map(({ points, score }, place) =>
      place === 0 ? `M${x.at(points)} ${y.at(score)}` : `H${x.at(points)} V${y.at(score)}`,
    )
    .join(' ');
  const last = scored.length - 1;
  const shown = at === null ? null : scored[Math.min(at, last)]!;
  const words = (place: number) =>
    `after ${formatCount(scored[place]!.points)} compositions: ${formatNumber(scored[place]!.score, decimals)}`;
  const hold = (place: number) => setAt(Math.max(0, Math.min(last, place)));
  return (
    <div>
      <div
        ref={stage}
        className="plot-stage"
        role="slider"
        aria-label="How the best became better; arrow keys walk the improvements"
        aria-valuemin={1}
        aria-valuemax={scored.length}
        aria-valuenow={(at ?? last) + 1}
        aria-valuetext={words(Math.min(at ?? last, last))}
        tabIndex={0}
        onKeyDown={(event) => {
          if (event.key === 'ArrowRight') hold((at ?? -1) + 1);
          else if (event.key === 'ArrowLeft') hold((at ?? scored.length) - 1);
          else return;
          event.preventDefault();
        }}
        onPointerMove={(event) => {
          const value = x.valueAt(event.clientX - stage.current!.getBoundingClientRect().x);
          hold(scored.findLastIndex(({ points }) => points <= value));
        }}
        onPointerLeave={() => setAt(null)}
      >
        <svg
          width={width}
          height={axisRoom.top + plotHeight + axisRoom.bottom}
          className="plot"
          aria-hidden="true"
        >
          <Axis side="left" scale={y} at={left} title={title} most={4} />
          <Axis side="bottom" scale={x} at={axisRoom.top + plotHeight} title="Compositions tested" most={4} />
          <path d={`${path} H${x.at(progress.points)}`} className="improvement-line" />
          {shown ? (
            <circle cx={x.at(shown.points)} cy={y.at(shown.score)} r={5} className="plot-here" />
          ) : null}
        </svg>
      </div>
      <p className="plot-readout small" aria-hidden="true">
        {at === null ? null : words(Math.min(at, last))}
      </p>
    </div>
  );
}
