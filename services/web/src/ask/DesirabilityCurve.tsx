import { parseNumber } from '../numbers/parseNumber.ts';
import type { RankRow } from './draft.ts';

const width = 56;
const height = 24;
const steps = 24;

/** A sketch of what a value is worth: from worthless (below) to wanted (above), with the shape's bend. */
export function DesirabilityCurve({ row }: { row: RankRow }) {
  const parsed = parseNumber(row.shape);
  const shape = 'value' in parsed && parsed.value !== null && parsed.value > 0 ? parsed.value : 1;
  const worth = {
    high: (x: number) => x,
    low: (x: number) => 1 - x,
    target: (x: number) => 1 - Math.abs(2 * x - 1),
  };
  const points = Array.from({ length: steps + 1 }, (_, index) => {
    const x = index / steps;
    return `${8 + (width - 16) * x},${height - 3 - (height - 6) * worth[row.prefer](x) ** shape}`;
  });
  const [start, end] = [points[0]!.split(',')[1], points.at(-1)!.split(',')[1]];
  return (
    <svg
      className="desirability"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      aria-hidden="true"
    >
      <polyline
        points={`0,${start} ${points.join(' ')} ${width},${end}`}
        fill="none"
        stroke="currentColor"
        strokeWidth="1.5"
      />
    </svg>
  );
}
