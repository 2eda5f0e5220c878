/** Equal bins: `counts[i]` values lie from `edges[i]` up to and not including `edges[i + 1]`; the last bin has its upper edge. */
export interface Bins {
  edges: number[];
  counts: number[];
}

/** Counts values in `count` equal bins from `from` to `to`; values outside and missing ones are left out. */
export function binsOf(values: Iterable<number | null>, from: number, to: number, count: number): Bins {
  const width = (to - from) / count;
  const counts = new Array<number>(count).fill(0);
  for (const value of values) {
    if (value === null || value < from || value > to) continue;
    const bin = Math.min(count - 1, Math.floor((value - from) / width));
    counts[bin]! += 1;
  }
  return { edges: Array.from({ length: count + 1 }, (_, place) => from + place * width), counts };
}
