import type { ScatterLayer } from './scatterData.ts';

const shapes = {
  diamond: 'M0 -5.5 L5.5 0 L0 5.5 L-5.5 0 Z',
  triangle: 'M0 -5.5 L5.2 4 L-5.2 4 Z',
  tick: 'M-7 -1 L-2 6 L8 -8',
} as const;

/** The mark of a layer: open, so that what lies under it can be seen, with a rim of paper. */
export function Mark({ mark, x, y }: { mark: ScatterLayer['mark']; x: number; y: number }) {
  // A tick is no outline of something: heavier, and in the ink that no point has.
  const kind = mark === 'tick' ? 'tick' : 'layer';
  return (
    <g transform={`translate(${x} ${y})`}>
      <path d={shapes[mark]} className={`${kind}-rim`} />
      <path d={shapes[mark]} className={`${kind}-mark`} />
    </g>
  );
}
