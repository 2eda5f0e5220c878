import type { ElementUse, SearchSpecification } from '@tiegel/contract';

/** Amounts of each element in equal bins: `counts` by symbol, one for each bin. */
export interface AmountBins {
  /** at.%, the middle of each bin */
  middles: number[];
  /** at.% */
  width: number;
  counts: Map<string, number[]>;
}

/** More bins than these cannot be told apart on a screen. */
const mostBins = 50;

/**
 * Amounts in bins of one common axis from 0: a bin for each step of the grid, or for several steps
 * where the grid is fine; for equal shares, of one at.%.
 */
export function amountBins(use: ElementUse, fractions: SearchSpecification['fractions']): AmountBins {
  const step = fractions === 'equimolar' ? 1 : fractions.step;
  const most = Math.max(step, ...use.elements.flatMap(({ amounts }) => amounts.at(-1)?.atomicPercent ?? 0));
  const steps = Math.round(most / step);
  const inBin = Math.ceil((steps + 1) / mostBins);
  const width = step * inBin;
  const count = Math.floor(steps / inBin) + 1;
  const counts = new Map(
    use.elements.map(({ symbol, amounts }) => {
      const bins = new Array<number>(count).fill(0);
      for (const { atomicPercent, candidates } of amounts) {
        bins[Math.min(count - 1, Math.floor(Math.round(atomicPercent / step) / inBin))]! += candidates;
      }
      return [symbol, bins];
    }),
  );
  const middles = Array.from({ length: count }, (_, bin) => step * (bin * inBin + (inBin - 1) / 2));
  return { middles, width, counts };
}
