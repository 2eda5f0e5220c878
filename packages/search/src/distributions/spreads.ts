import type { SearchDistributions } from '@tiegel/contract';

type Spread = SearchDistributions['quantities'][number]['kept'];

const bins = 60;
/** At either end, this share of a set may lie outside the bins: few far ones would press all others into one bin. */
const tail = 0.002;

/**
 * Edges of equal bins that hold nearly all of each set of values and every place that is named
 * (the edges of limits). Values alike get bins around them.
 */
export function edgesFor(sets: readonly Iterable<number>[], named: readonly number[]): number[] {
  const ends = sets.flatMap((values) => {
    const sorted = Float64Array.from(values).sort();
    const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))]!;
    return sorted.length === 0 ? [] : [at(tail), at(1 - tail)];
  });
  const low = Math.min(...ends, ...named);
  const high = Math.max(...ends, ...named);
  if (low > high) return edgesFor([[0]], []);
  const room = high > low ? (high - low) * 0.01 : Math.max(Math.abs(low) * 0.05, 0.5);
  const [from, to] = [low - room, high + room];
  return Array.from({ length: bins + 1 }, (_, edge) => from + ((to - from) * edge) / bins);
}

/** Counts values in bins, one by one. A value that is null or not finite is missing. */
export function spreadOver(edges: readonly number[]) {
  const spread: Spread = {
    counts: new Array<number>(edges.length - 1).fill(0),
    below: 0,
    above: 0,
    missing: 0,
  };
  const [from, to] = [edges[0]!, edges.at(-1)!];
  const width = (to - from) / spread.counts.length;
  return {
    spread,
    add(value: number | null): void {
      if (value === null || !Number.isFinite(value)) spread.missing += 1;
      else if (value < from) spread.below += 1;
      else if (value > to) spread.above += 1;
      else spread.counts[Math.min(spread.counts.length - 1, Math.floor((value - from) / width))]! += 1;
    },
  };
}
