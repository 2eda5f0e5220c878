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

const frontName = 'Pareto front of the axes';

/** Height that the legend of a scatter of this width needs, px. */
export function legendHeight(
  colour: string | null,
  layers: readonly ScatterLayer[],
  front: boolean,
  width: number,
): number {
  const last = placesIn(namesOf(layers, front), width).at(-1);
  return (colour === null ? 0 : line) + (last === undefined ? 0 : last.y + line);
}

function namesOf(layers: readonly ScatterLayer[], front: boolean): string[] {
  return [...layers.map(({ name }) => name), ...(front ? [frontName] : [])];
}

/** Where each name of the legend begins: one after the other, in as many lines as the width asks for. */
function placesIn(names: readonly string[], width: number): { x: number; y: number }[] {
  let [x, y] = [0, 0];
  return names.map((name) => {
    const needed = name.length * 6.4 + 34;
    if (x > 0 && x + needed > width - 8) [x, y] = [0, y + line];
    const place = { x, y };
    x += needed;
    return place;
  });
}

/** What the colour and the marks of a scatter mean, inside its SVG. */
export function ScatterLegend({ colour, range, sequence, layers, front, width }: ScatterLegendProps) {
  const names = namesOf(layers, front);
  const places = placesIn(names, width);
  return (
    <g className="legend">
      {colour === null ? null : <Ramp title={colour} range={range} sequence={sequence} right={width - 8} />}
      <g transform={`translate(8 ${colour === null ? 0 : line})`}>
        {names.map((name, place) => {
          const { x, y } = places[place]!;
          return (
            <g key={name} transform={`translate(${x} ${y})`}>
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
