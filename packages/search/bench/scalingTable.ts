import type { ChunkCost } from './chunkCost.ts';
import type { FreshRun } from './freshProcess.ts';
import type { ScalingReport } from './scaling.ts';

/** A report as a table in Markdown. */
export function scalingTableOf({ points, rounds, load, carriers }: ScalingReport): string {
  const head = [
    ...['workers', 'seconds', 'times as fast as the first', 'seconds over those of as many threads'],
    ...['workers scored, %', 'estimated before / taken'],
  ];
  const rows = carriers.map(({ carrier, median, min, max, overFirst, overThreads, busy, estimated }) => [
    ...[carrier, `${median.toFixed(2)} [${min.toFixed(2)} .. ${max.toFixed(2)}]`],
    ...[overFirst.toFixed(2), overThreads === null ? '' : overThreads.toFixed(3)],
    ...[(100 * busy).toFixed(1), estimated.toFixed(2)],
  ]);
  return [
    `Whole searches of ${(points / 1e6).toFixed(0)} million points, six limits, each counted; \`seconds\` on the clock: median [least .. greatest] of ${rounds} rounds in turns, warm; load ${load.map((one) => one.toFixed(1)).join(' to ')}.`,
    '',
    tableOf(head, rows),
  ].join('\n');
}

/** Whole commands as a table in Markdown. */
export function freshTableOf(runs: readonly FreshRun[], rounds: number): string {
  const head = [
    ...['whole command', 'million points', 'plain C, s', 'seconds', 'plain C over it', 'preparation'],
    ...['start to end, s', 'plain C over it', 'processor, s', 'memory, MB'],
  ];
  const over = (plain: number | null, taken: number) =>
    plain === null ? '' : (plain / taken).toPrecision(3);
  const rows = runs.map(({ command, points, plain, seconds, preparation, wall, processor, memory }) => [
    ...[command, (points / 1e6).toFixed(1), plain === null ? '' : plain.toFixed(2)],
    ...[seconds.toFixed(3), over(plain, seconds), preparation.toFixed(2)],
    ...[wall.toFixed(2), over(plain, wall), processor.toFixed(2), memory.toFixed(0)],
  ]);
  return [
    `\`tiegel search --json\` as a fresh process, one worker but for fresh-whole-one-percent: medians of ${rounds} rounds on the clock; of the plain loop processor time. Memory is the most of all rounds.`,
    '',
    tableOf(head, rows),
  ].join('\n');
}

/** What chunks cost as a table in Markdown. */
export function chunkCostTableOf(costs: readonly ChunkCost[]): string {
  const head = ['a chunk costs, ms of processor time', 'collector', 'worker', 'Redis', 'on the clock'];
  const rows = costs.map(({ carrier, collector, worker, redis, elapsed }) => [
    carrier,
    ...[collector, worker, redis, elapsed].map((ms) => (ms === null ? '' : ms.toPrecision(2))),
  ]);
  return tableOf(head, rows);
}

function tableOf(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}
