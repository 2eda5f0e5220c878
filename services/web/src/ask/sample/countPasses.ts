import { limitTolerance } from '@tiegel/contract/terms';
import type { Sample } from './sample.ts';

/** A limit as the form has it: without bounds it lets everything through. */
export interface TriedLimit {
  quantity: string;
  min: number | null;
  max: number | null;
}

/** What limits leave of a sample, as numbers of compositions. */
export interface Passes {
  size: number;
  all: number;
  /** in the order of the limits: that meet this one, and that meet all the others */
  each: readonly { alone: number; others: number }[];
  /** for each composition drawn, how many limits it fails */
  failed: Uint8Array;
  /** for each that fails exactly one limit, which; anything else elsewhere */
  failedOne: Uint8Array;
}

/**
 * Counts which compositions of a sample meet which limits. A value on a limit meets it, within
 * the tolerance of the search itself; a composition without a value fails. Limits on quantities
 * that the sample does not hold are left out of every count.
 */
export function countPasses({ size, values }: Sample, limits: readonly TriedLimit[]): Passes {
  const failed = new Uint8Array(size);
  const failedOne = new Uint8Array(size);
  const alone = limits.map(({ quantity, min, max }, index) => {
    const drawn = values.get(quantity);
    if (!drawn || (min === null && max === null)) return size;
    const least = min === null ? Number.NEGATIVE_INFINITY : min - limitTolerance(min);
    const most = max === null ? Number.POSITIVE_INFINITY : max + limitTolerance(max);
    let passes = 0;
    for (let point = 0; point < size; point += 1) {
      const value = drawn[point] ?? null;
      if (value !== null && value >= least && value <= most) passes += 1;
      else {
        failed[point]! += 1;
        failedOne[point] = index;
      }
    }
    return passes;
  });
  let all = 0;
  const onlyThis = limits.map(() => 0);
  for (let point = 0; point < size; point += 1) {
    if (failed[point] === 0) all += 1;
    else if (failed[point] === 1) onlyThis[failedOne[point]!]! += 1;
  }
  const each = limits.map((_, index) => ({ alone: alone[index]!, others: all + onlyThis[index]! }));
  return { size, all, each, failed, failedOne };
}

/** Whether a composition meets all limits but, perhaps, the one of this index. */
export function meetsOthers({ failed, failedOne }: Passes, point: number, limit: number): boolean {
  return failed[point] === 0 || (failed[point] === 1 && failedOne[point] === limit);
}

/** The limit without which most more would pass, where at least half as many again would; −1 where none stands out. */
export function tightest({ all, each }: Passes): number {
  const most = Math.max(...each.map(({ others }) => others), 0);
  return most > 1.5 * all && most > 0 ? each.findIndex(({ others }) => others === most) : -1;
}
