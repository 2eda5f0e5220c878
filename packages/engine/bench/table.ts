import type { Report } from './bench.ts';
import type { Rates } from './rates.ts';

/** A report as text: the machine, then a table in Markdown. */
export function tableOf({ machine, loadAtEnd, rounds, comparisons }: Report): string {
  const rows = comparisons.map(({ workload, passing, reference, fast, ratio }) => [
    workload,
    `${(100 * passing).toFixed(0)} %`,
    inMillions(reference.points),
    rateOf(reference),
    inMillions(fast.points),
    rateOf(fast),
    `${ratio.toFixed(0)} x`,
  ]);
  const head = ['workload', 'passing', 'points, reference', 'reference', 'points, fast', 'fast', 'ratio'];
  return [
    `${machine.processor}, ${machine.cores} cores, Node ${machine.node}; load ${machine.load.toFixed(1)} at the start, ${loadAtEnd.toFixed(1)} at the end.`,
    `Millions of points a second of one core's time: median [least .. greatest] of ${rounds} rounds in turns.`,
    'Both sides form every limited quantity at every point, and the score of the points that pass. The reference takes a sample of the points.',
    '',
    ...[head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`),
  ].join('\n');
}

function rateOf({ median, min, max }: Rates): string {
  return `${inMillions(median)} [${inMillions(min)} .. ${inMillions(max)}]`;
}

function inMillions(number: number): string {
  return (number / 1e6).toPrecision(3);
}
