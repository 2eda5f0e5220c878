/** From values to places on the screen (px) and back; `from` lies at `start`, `to` at `end`. */
export interface Scale {
  kind: 'linear' | 'logarithmic';
  from: number;
  to: number;
  start: number;
  end: number;
  at: (value: number) => number;
  valueAt: (place: number) => number;
}

export function linearScale(from: number, to: number, start: number, end: number): Scale {
  const pixelsPerValue = (end - start) / (to - from);
  return {
    kind: 'linear',
    ...{ from, to, start, end },
    at: (value) => start + (value - from) * pixelsPerValue,
    valueAt: (place) => from + (place - start) / pixelsPerValue,
  };
}
