import type { Preference } from '@tiegel/contract';
import { quantities } from '@tiegel/screening';
import { scoreChunk } from '../src/index.ts';
import { preparedFor } from './compare.ts';
import { type Workload, workloads } from './workloads.ts';

/** What a search for the best by one quantity took, s of one core's time; null where it was ended before. */
export interface RankingTime {
  quantity: string;
  prefer: 'high' | 'low';
  seconds: number | null;
}

const workload: Workload = workloads.find(({ name }) => name === 'full-one-percent')!;

/**
 * Times `full-one-percent`, tally none, ranked by every quantity in turn, high and low, each once and
 * as one chunk of one thread. A search that takes longer than `mostSeconds` is ended.
 */
export function rankings(mostSeconds: number, log: (line: string) => void): RankingTime[] {
  return quantities.flatMap(({ id }) =>
    (['low', 'high'] as const).map((prefer) => {
      const seconds = secondsOf(id, prefer, mostSeconds);
      log(`${id} ${prefer}: ${seconds === null ? 'ended' : `${seconds.toFixed(2)} s`}`);
      return { quantity: id, prefer, seconds };
    }),
  );
}

function secondsOf(quantity: string, prefer: Preference, mostSeconds: number): number | null {
  const { specification } = workload;
  const prepared = preparedFor({
    ...workload,
    specification: { ...specification, rank: [{ quantity, prefer }] },
  });
  const { count } = prepared.systems;
  const whole = { ordinal: 0, firstSystem: 0, endSystem: count, firstPoint: 0, endPoint: null, points: 0 };
  const start = process.threadCpuUsage();
  const seconds = () => {
    const { user, system } = process.threadCpuUsage(start);
    return (user + system) / 1e6;
  };
  const stopped = () => seconds() > mostSeconds;
  const outcome = scoreChunk(prepared, whole, { cutOff: null, stopped });
  return outcome === null ? null : seconds();
}

/** The times as a table in Markdown, a quantity a line. */
export function rankingsTableOf(times: readonly RankingTime[], mostSeconds: number): string {
  const shown = (quantity: string, prefer: string) => {
    const seconds = times.find((one) => one.quantity === quantity && one.prefer === prefer)?.seconds;
    return typeof seconds === 'number' ? seconds.toFixed(2) : `above ${mostSeconds}`;
  };
  const ids = [...new Set(times.map(({ quantity }) => quantity))];
  return [
    'The best 1000 of 8.58·10⁹ points by one quantity, tally none, s of one core’s time:',
    '',
    '| ranked by | low | high |',
    '| --- | --- | --- |',
    ...ids.map((id) => `| ${id} | ${shown(id, 'low')} | ${shown(id, 'high')} |`),
  ].join('\n');
}
