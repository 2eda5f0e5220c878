const view = new DataView(new ArrayBuffer(8));

/** The least double above a finite number. */
export function numberAbove(value: number): number {
  if (value === 0) return Number.MIN_VALUE;
  return neighbour(value, value > 0 ? 1n : -1n);
}

/** The greatest double below a finite number. */
export function numberBelow(value: number): number {
  return -numberAbove(-value);
}

/** Doubles of one sign are ordered as their bits are. */
function neighbour(value: number, step: bigint): number {
  view.setFloat64(0, value);
  view.setBigInt64(0, view.getBigInt64(0) + step);
  return view.getFloat64(0);
}
