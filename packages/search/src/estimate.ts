import { calibrate } from '@tiegel/engine';
import type { CheckedSearch } from './check.ts';

/** Rates that are kept, of the questions asked last. */
const mostKept = 100;

/** How fast one worker scores a search. */
export interface Estimates {
  /** Points a second on one core of this machine, measured for questions of this kind in 0.1 s, and once for each kind. */
  pointsPerSecond(checked: CheckedSearch): number;
}

export function estimates(): Estimates {
  const known = new Map<string, number>();
  return {
    pointsPerSecond(checked) {
      const kind = kindOf(checked);
      // A grid without points is refused before anybody asks how fast it is.
      const rate = known.get(kind) ?? calibrate(checked.prepared) ?? 1;
      known.delete(kind);
      known.set(kind, rate);
      for (const oldest of known.keys()) {
        if (known.size <= mostKept) break;
        known.delete(oldest);
      }
      return rate;
    },
  };
}

/** What decides the rate: formulas, length of the lines, and how much is kept; not which elements, nor which bounds. */
function kindOf({ plan: { specification } }: CheckedSearch): string {
  const { limits, rank, components, fractions, keep, keepPerSystem } = specification;
  return JSON.stringify([
    ...[limits.map(({ quantity }) => quantity), rank.map(({ quantity }) => quantity), components],
    ...[fractions === 'equimolar' ? fractions : fractions.step, keep, keepPerSystem],
  ]);
}
