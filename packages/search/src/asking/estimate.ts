import type { SearchSpecification } from '@tiegel/contract';
import { calibrate, roughRate, secondsAtMost } from '@tiegel/engine';
import type { CheckedSearch } from './check.ts';

/** Rates and bounds that are kept, of the questions asked last. */
const mostKept = 100;
/** A search that seems to take less, s, is not worth an exact measurement before it begins. */
const shortSeconds = 8;
/** Scoring that is worth learning from takes longer than this, s. */
const leastSeconds = 0.5;

/** How fast one worker scores questions of a kind, points a second. */
export interface Estimates {
  /** Measured on one core of this machine, in 0.3 to 0.5 s and once for each kind, until a search of the kind has told better. */
  pointsPerSecond(checked: CheckedSearch): number;
  /**
   * The same, to cut a search into chunks for so many workers: where it is not known, measured roughly in less
   * than 0.1 s, and as above only for a search that is long beside that.
   */
  roughPointsPerSecond(checked: CheckedSearch, workers: number): number;
  /** A bound, s, of what a search that leaves regions out takes on so many workers; worked out in 0.3 to 0.8 s, once for each. */
  secondsAtMost(checked: CheckedSearch, workers: number): number;
  /** Notes what scoring so many points took, s of one worker. */
  learn(specification: SearchSpecification, points: number, seconds: number): void;
}

/** Processor time of this thread: what else the machine does is no part of the rate. */
function processorMs(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}

export function estimates(): Estimates {
  const known = new Map<string, number>();

  function keep(kind: string, rate: number): void {
    known.delete(kind);
    known.set(kind, rate);
    for (const oldest of known.keys()) {
      if (known.size <= mostKept) break;
      known.delete(oldest);
    }
  }

  function pointsPerSecond({ plan, prepared }: CheckedSearch): number {
    const kind = kindOf(plan.specification);
    // A grid without points is refused before anybody asks how fast it is.
    const rate = known.get(kind) ?? calibrate(prepared, processorMs) ?? 1;
    keep(kind, rate);
    return rate;
  }

  return {
    pointsPerSecond,
    roughPointsPerSecond(checked, workers) {
      const { plan, prepared, points } = checked;
      const rate = known.get(kindOf(plan.specification)) ?? roughRate(prepared, processorMs) ?? 1;
      const isShort = points / (rate * Math.max(1, workers)) < shortSeconds;
      return isShort ? rate : pointsPerSecond(checked);
    },
    secondsAtMost({ plan, prepared, points }, workers) {
      const { name: _, ...asked } = plan.specification;
      const search = JSON.stringify([asked, plan.dataVersion, workers]);
      const seconds = known.get(search) ?? secondsAtMost(prepared, points, workers);
      keep(search, seconds);
      return seconds;
    },
    learn(specification, points, seconds) {
      // Less tells more of starting than of scoring.
      if (seconds > leastSeconds) keep(kindOf(specification), points / seconds);
    },
  };
}

/** What decides the rate: formulas, length of the lines, and how much is kept; not which elements, nor which bounds. */
function kindOf({
  limits,
  rank,
  front = [],
  components,
  fractions,
  keep,
  keepPerSystem,
  tally,
}: SearchSpecification): string {
  return JSON.stringify([
    ...[limits.map(({ quantity }) => quantity), rank.map(({ quantity }) => quantity), components],
    front.map(({ quantity }) => quantity),
    ...[fractions === 'equimolar' ? fractions : fractions.step, keep, keepPerSystem, tally],
  ]);
}
