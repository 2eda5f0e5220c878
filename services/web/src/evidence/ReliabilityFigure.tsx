import type { Evidence } from '@tiegel/contract';
import { formatCount, formatNumber } from '../numbers/formatNumber.ts';
import { Axis, axisRoom } from '../plot/Axis.tsx';
import { Figure } from '../plot/Figure.tsx';
import { linearScale } from '../plot/linearScale.ts';
import { PlotSvg } from '../plot/PlotSvg.tsx';
import { useWidth } from '../plot/useWidth.ts';
import { filledBins } from './filledBins.ts';

type Record = Evidence['phaseEstimate'];

const widest = 560;

/** What the estimate said beside what happened: on the line it is as sure as it may be. */
export function ReliabilityFigure({ record }: { record: Record }) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const { reliability, baseRate, n, systems } = record;
  return (
    <Figure
      title="Reliability of the phase estimate"
      caption={[
        `On ${formatCount(n)} published alloys of ${formatCount(systems)} systems, each system left out while the estimate learnt; mean of 20 draws.`,
        'On the line, what is said is what happens; below it the estimate says one solution too often, above it too seldom. The area of a dot is the number of alloys.',
      ]}
      fileName="reliability"
      table={<ReliabilityTable reliability={reliability} />}
    >
      <div ref={ref} className="reliability">
        {width > 0 ? (
          <Drawing reliability={reliability} baseRate={baseRate} width={Math.min(width, widest)} />
        ) : null}
      </div>
    </Figure>
  );
}

interface DrawingProps {
  reliability: Record['reliability'];
  baseRate: number;
  width: number;
}

function Drawing({ reliability, baseRate, width }: DrawingProps) {
  const height = Math.min(width, 420);
  const x = linearScale(0, 1, axisRoom.left, width - axisRoom.right);
  const y = linearScale(0, 1, height - axisRoom.bottom, axisRoom.top);
  const bins = filledBins(reliability);
  return (
    <PlotSvg width={width} height={height}>
      <Axis side="left" scale={y} at={x.start} title="Share that was one solution" grid={x.end - x.start} />
      <Axis side="bottom" scale={x} at={y.start} title="Probability that the estimate gave" />
      <line x1={x.at(0)} y1={y.at(0)} x2={x.at(1)} y2={y.at(1)} className="reliability-ideal" />
      <line x1={x.at(0)} x2={x.at(1)} y1={y.at(baseRate)} y2={y.at(baseRate)} className="reliability-base" />
      {/* On the left: there the curve and the diagonal lie below it. */}
      <text x={x.at(0) + 6} y={y.at(baseRate) - 6} className="reliability-base-name rimmed">
        base rate {formatNumber(baseRate, 2)}
      </text>
      <polyline
        points={bins.map(({ said, happened }) => `${x.at(said)},${y.at(happened)}`).join(' ')}
        className="reliability-line"
      />
      {bins.map(({ from, said, happened, count }) => (
        <circle
          key={from}
          cx={x.at(said)}
          cy={y.at(happened)}
          r={Math.max(2.5, 1.5 * Math.sqrt(count))}
          className="reliability-dot"
        />
      ))}
    </PlotSvg>
  );
}

function ReliabilityTable({ reliability }: { reliability: Record['reliability'] }) {
  return (
    <table className="plain-table">
      <thead>
        <tr>
          <th scope="col">Said, %</th>
          <th scope="col" className="number">
            Mean said, %
          </th>
          <th scope="col" className="number">
            Happened, %
          </th>
          <th scope="col" className="number">
            Alloys a draw
          </th>
        </tr>
      </thead>
      <tbody>
        {reliability.map(({ from, to, said, happened, count }) => (
          <tr key={from}>
            <th scope="row" className="plain">
              {formatNumber(100 * from, 0)} to {formatNumber(100 * to, 0)}
            </th>
            <td className="number">{formatNumber(said && 100 * said, 0)}</td>
            <td className="number">{formatNumber(happened && 100 * happened, 0)}</td>
            <td className="number">{formatNumber(count, 1)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
