import type { ReactNode } from 'react';
import './plot.css';

interface PlotSvgProps {
  /** px */
  width: number;
  height: number;
  children: ReactNode;
}

/** The SVG of a plot: as wide as it was measured on a screen; on paper it shrinks to the sheet and stays whole. */
export function PlotSvg({ width, height, children }: PlotSvgProps) {
  return (
    <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} className="plot" aria-hidden="true">
      {children}
    </svg>
  );
}
