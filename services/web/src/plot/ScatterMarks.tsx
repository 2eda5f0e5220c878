import { memo } from 'react';
import type { Scale } from './linearScale.ts';
import { Mark } from './Mark.tsx';
import type { ScatterBrush, ScatterLayer } from './scatterData.ts';

interface ScatterMarksProps {
  x: Scale;
  y: Scale;
  layers: readonly ScatterLayer[];
  /** from one end to the other */
  front: readonly { x: number; y: number }[];
  /** lies over everything else */
  ticks: ScatterLayer | null;
}

/** What lies over the points: other layers, and the front as the staircase that nothing lies beyond. */
export const ScatterMarks = memo(function ScatterMarks(props: ScatterMarksProps) {
  const { x, y, layers, front, ticks } = props;
  const inside = (point: { x: number; y: number }) =>
    point.x >= x.from && point.x <= x.to && point.y >= y.from && point.y <= y.to;
  const drawn = ({ name, mark, points }: ScatterLayer) => (
    <g key={name}>
      {points.filter(inside).map((point, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: points of one drawing never change places
        <Mark key={place} mark={mark} x={x.at(point.x)} y={y.at(point.y)} />
      ))}
    </g>
  );
  return (
    <g>
      {layers.map(drawn)}
      {front.length > 0 ? <path d={staircase(front, x, y)} className="front-line" /> : null}
      {front.map((point) => (
        <rect
          key={`${point.x} ${point.y}`}
          x={x.at(point.x) - 3}
          y={y.at(point.y) - 3}
          width={6}
          height={6}
          className="front-point"
        />
      ))}
      {ticks === null ? null : drawn(ticks)}
    </g>
  );
});

/** Lines from member to member along the axes; the corner lies on the side that is worse in both. */
function staircase(front: ScatterMarksProps['front'], x: Scale, y: Scale): string {
  return front
    .map((point, place) => {
      const [left, top] = [x.at(point.x), y.at(point.y)];
      return place === 0 ? `M${left} ${top}` : `H${left} V${top}`;
    })
    .join(' ');
}

/** The rectangle that selects points. */
export function BrushRectangle({ brush, x, y }: { brush: ScatterBrush; x: Scale; y: Scale }) {
  const hold = (value: number, { start, end }: Scale) =>
    Math.max(Math.min(start, end), Math.min(Math.max(start, end), value));
  const [left, right] = brush.x.map((value) => hold(x.at(value), x)) as [number, number];
  const [bottom, top] = brush.y.map((value) => hold(y.at(value), y)) as [number, number];
  return (
    <rect
      x={left}
      y={top}
      width={Math.max(1, right - left)}
      height={Math.max(1, bottom - top)}
      className="brush"
    />
  );
}
