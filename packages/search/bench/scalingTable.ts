import type { ChunkCost } from './chunkCost.ts';
import type { ScalingReport } from './scaling.ts';

/** A report as a table in Markdown. */
export function scalingTableOf({ points, rounds, load, carriers }: ScalingReport): string {
  const head = ['workers', 'seconds', 'over one thread', 'estimated before / taken'];
  const rows = carriers.map(({ carrier, median, min, max, overFirst, estimated }) => [
    ...[carrier, `${median.toFixed(2)} [${min.toFixed(2)} .. ${max.toFixed(2)}]`],
    ...[overFirst.toFixed(2), estimated.toFixed(2)],
  ]);
  return [
    `Whole searches of ${(points / 1e6).toFixed(0)} million points, six limits, each counted; \`seconds\` on the clock: median [least .. greatest] of ${rounds} rounds in turns, warm; load ${load.map((one) => one.toFixed(1)).join(' to ')}.`,
    '',
    ...[head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`),
  ].join('\n');
}

/** What chunks cost as a table in Markdown. */
export function chunkCostTableOf(costs: readonly ChunkCost[]): string {
  const head = ['a chunk costs, ms of processor time', 'collector', 'worker', 'Redis', 'on the clock'];
  const rows = costs.map(({ carrier, collector, worker, redis, elapsed }) => [
    carrier,
    ...[collector, worker, redis, elapsed].map((ms) => (ms === null ? '' : ms.toPrecision(2))),
  ]);
  return [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}
