import type { DragRange } from './dragRange.ts';
import { type Wish, worthAt } from './worth.ts';

const steps = 200;
const height = 100;

/** What values are worth, from worthless (below) to wanted (above), over their distribution. */
export function WorthCurve({ wish, range: { from, to } }: { wish: Wish; range: DragRange }) {
  const points = Array.from({ length: steps + 1 }, (_, step) => {
    const worth = worthAt(wish, from + ((to - from) * step) / steps);
    return `${step},${(height - 3 - (height - 6) * worth).toFixed(2)}`;
  });
  return (
    <svg
      className="worth-curve"
      viewBox={`0 0 ${steps} ${height}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <polyline points={points.join(' ')} />
    </svg>
  );
}
