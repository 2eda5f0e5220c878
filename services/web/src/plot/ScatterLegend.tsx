import { formatNumber } from '../numbers/formatNumber.ts';
import { Mark } from './Mark.tsx';
import { niceTicks } from './niceTicks.ts';
import { SvgNotation } from './SvgNotation.tsx';
import type { ScatterLayer } from './scatterData.ts';

interface ScatterLegendProps {
  /** what the colour tells, with unit; null where it tells nothing */
  colour: string | null;
  range: readonly [number, number];
  sequence: readonly string[];
  layers: readonly ScatterLayer[];
  front: boolean;
  width: number;
}

const rampWidth = 132;
const rampSteps = 24;
const line = 18;

/** Height that the legend of a scatter needs, px. */
export function legendHeight(colour: string | null, layers: number): number {
  return (colour === null ? 0 : line) + (layers > 0 ? line : 0);
}

/** What the colour and the marks of a scatter mean, inside its SVG. */
export function ScatterLegend({ colour, range, sequence, layers, front, width }: ScatterLegendProps) {
  const names = [...layers.map(({ name }) => name), ...(front ? ['Pareto front of the axes'] : [])];
  return (
    <g className="legend">
      {colour === null ? null : <Ramp title={colour} range={range} sequence={sequence} right={width - 8} />}
      <g transform={`translate(8 ${colour === null ? 0 : line})`}>
        {names.map((name, place) => {
          const before = names.slice(0, place).join('').length * 6.4 + place * 34;
          return (
            <g key={name} transform={`translate(${before} 0)`}>
              {layers[place] ? (
                <Mark mark={layers[place].mark} x={6} y={8} />
              ) : (
                <line x1={0} x2={14} y1={8} y2={8} className="front-line" />
              )}
              <text x={20} y={12}>
                {name}
              </text>
            </g>
          );
        })}
      </g>
    </g>
  );
}

interface RampProps {
  title: string;
  range: readonly [number, number];
  sequence: readonly string[];
  right: number;
}

function Ramp({ title, range: [from, to], sequence, right }: RampProps) {
  const { decimals } = niceTicks(from, to, 5);
  const step = rampWidth / rampSteps;
  const high = formatNumber(to, decimals);
  const left = right - rampWidth - high.length * 7 - 6;
  return (
    <g>
      <text x={left - 6} y={12} textAnchor="end">
        <SvgNotation text={`${title}  ${formatNumber(from, decimals)}`} />
      </text>
      {Array.from({ length: rampSteps }, (_, place) => (
        <rect
          // biome-ignore lint/suspicious/noArrayIndexKey: steps of a fixed sequence
          key={place}
          x={left + place * step}
          y={2}
          width={step + 0.5}
          height={12}
          fill={sequence[Math.floor((place + 0.5) * (sequence.length / rampSteps))]}
        />
      ))}
      <text x={right} y={12} textAnchor="end">
        {high}
      </text>
    </g>
  );
}
