import type { Tally } from '@tiegel/contract';
import { quantities } from '@tiegel/screening';
import { countPoints, scoreChunk, secondsAtMost } from '../src/index.ts';
import { preparedFor } from './compare.ts';
import { type Workload, workloads } from './workloads.ts';

/** What was said before a search that leaves regions out, and what it took, s on the clock; null where it was ended before. */
export interface AtMost {
  search: string;
  atMost: number;
  seconds: number | null;
}

const workload: Workload = workloads.find(({ name }) => name === 'full-five-percent-5')!;
/** A search is ended after so many times the bound, which it has then exceeded. */
const mostOfBound = 2;

/**
 * Compares the bound of the time with the time, on one worker: the grid of `full-five-percent-5` ranked by
 * every quantity, high and low, with the passes counted together and not at all.
 */
export function boundsAndTimes(log: (line: string) => void): AtMost[] {
  return quantities.flatMap(({ id }) =>
    (['low', 'high'] as const).flatMap((prefer) =>
      (['none', 'all'] as const).map((tally) => {
        const one = boundAndTime(id, prefer, tally);
        log(`${one.search}: ${one.seconds?.toFixed(2) ?? 'ended'} s, at most ${one.atMost.toFixed(2)} s`);
        return one;
      }),
    ),
  );
}

function boundAndTime(quantity: string, prefer: 'low' | 'high', tally: Tally): AtMost {
  const { specification } = workload;
  const asked = { ...workload, specification: { ...specification, tally, rank: [{ quantity, prefer }] } };
  const prepared = preparedFor(asked);
  const points = Number(countPoints(prepared.grid));
  const atMost = secondsAtMost(prepared, points, 1);
  const { count } = prepared.systems;
  const whole = { ordinal: 0, firstSystem: 0, endSystem: count, firstPoint: 0, endPoint: null, points };
  // As a worker begins: nothing of what the bound made is known.
  const fresh = preparedFor(asked);
  const start = performance.now();
  const seconds = () => (performance.now() - start) / 1000;
  const outcome = scoreChunk(fresh, whole, {
    cutOff: null,
    stopped: () => seconds() > mostOfBound * atMost,
  });
  return { search: `${quantity} ${prefer}, tally ${tally}`, atMost, seconds: outcome && seconds() };
}

/** How often the bound was exceeded, and how near the times came to it. */
export function atMostTableOf(bounds: readonly AtMost[]): string {
  const shares = bounds
    .map(({ atMost, seconds }) => (seconds ?? Number.POSITIVE_INFINITY) / atMost)
    .toSorted((one, other) => one - other);
  const exceeded = bounds.filter(({ atMost, seconds }) => seconds === null || seconds > atMost);
  return [
    `Time as a share of the bound before it, ${bounds.length} searches: median ${shares[shares.length >> 1]!.toFixed(2)}, greatest ${shares.at(-1)!.toFixed(2)}.`,
    `Exceeded: ${exceeded.length === 0 ? 'never' : exceeded.map(({ search }) => search).join('; ')}.`,
  ].join('\n');
}
