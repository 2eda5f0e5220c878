import { formatNumber } from '../numbers/formatNumber.ts';
import type { Scale } from './linearScale.ts';
import { logarithmicTicks } from './logarithmicScale.ts';
import { niceTicks } from './niceTicks.ts';
import './plot.css';
import { SvgNotation } from './SvgNotation.tsx';

interface AxisProps {
  side: 'bottom' | 'left';
  scale: Scale;
  /** where the axis stands: y of a bottom axis, x of a left one */
  at: number;
  /** name, symbol and unit, as 'Density ρ (g/cm³)': see axisTitle */
  title: string;
  /** lines across the plot at each mark: how long, in px */
  grid?: number;
  /** at most so many marks; from the length of the axis if left out */
  most?: number;
}

/** Room that axes need around a plot, in px. */
export const axisRoom = { left: 56, right: 18, top: 30, bottom: 46 } as const;

/**
 * An axis inside an SVG: marks at round values in the reader's language, and its title with unit.
 * The title of a left axis lies over it, from left to right: nobody has to turn their head.
 */
export function Axis({ side, scale, at, title, grid = 0, most }: AxisProps) {
  const length = Math.abs(scale.end - scale.start);
  const { values, text } = marksOf(
    scale,
    most ?? Math.max(4, Math.round(length / (side === 'bottom' ? 80 : 36))),
  );
  if (side === 'bottom') {
    return (
      <g className="axis" transform={`translate(0 ${at})`}>
        <line x1={scale.start} x2={scale.end} className="axis-line" />
        {values.map((value) => (
          <g key={value} transform={`translate(${scale.at(value)} 0)`}>
            {grid > 0 ? <line y1={-grid} y2={0} className="axis-grid" /> : null}
            <line y2={5} className="axis-line" />
            <text y={18} textAnchor="middle" className="axis-number">
              {text(value)}
            </text>
          </g>
        ))}
        <text x={(scale.start + scale.end) / 2} y={38} textAnchor="middle" className="axis-title">
          <SvgNotation text={title} />
        </text>
      </g>
    );
  }
  return (
    <g className="axis" transform={`translate(${at} 0)`}>
      <line y1={scale.start} y2={scale.end} className="axis-line" />
      {values.map((value) => (
        <g key={value} transform={`translate(0 ${scale.at(value)})`}>
          {grid > 0 ? <line x1={0} x2={grid} className="axis-grid" /> : null}
          <line x1={-5} className="axis-line" />
          <text x={-8} dy="0.32em" textAnchor="end" className="axis-number">
            {text(value)}
          </text>
        </g>
      ))}
      <text x={8 - at} y={Math.min(scale.start, scale.end) - 14} className="axis-title">
        <SvgNotation text={title} />
      </text>
    </g>
  );
}

/** Where the marks are, and what stands at them. */
function marksOf(scale: Scale, most: number): { values: number[]; text: (value: number) => string } {
  const [from, to] = [Math.min(scale.from, scale.to), Math.max(scale.from, scale.to)];
  if (scale.kind === 'logarithmic') {
    const decimals = (value: number) => Math.max(0, -Math.floor(Math.log10(value) + 1e-9));
    return {
      values: logarithmicTicks(from, to, most),
      text: (value) => formatNumber(value, decimals(value)),
    };
  }
  const { values, decimals } = niceTicks(from, to, most);
  return { values, text: (value) => formatNumber(value, decimals) };
}
