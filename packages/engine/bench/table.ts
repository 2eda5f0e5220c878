import type { Report } from './bench.ts';
import type { Comparison, Measured } from './compare.ts';
import { sides } from './sides.ts';

/** A report as text: the machine, then tables in Markdown. */
export function tableOf(report: Report): string {
  const { machine, loadAtEnd, rounds, comparisons, forms } = report;
  const columns = ['plain C', ...sides.map(({ name }) => name)];
  const head = ['workload', 'tally', 'passing', ...columns];
  const rows = comparisons.map(({ workload, tally, passing, sides: measured }) => [
    ...[workload, tally, `${(100 * passing).toPrecision(2)} %`],
    ...columns.map((name) => cellOf(measured.find(({ side }) => side === name))),
  ]);
  return [
    `${machine.processor}, ${machine.cores} cores, Node ${machine.node}; load ${machine.load.toFixed(1)} at the start, ${loadAtEnd.toFixed(1)} at the end.`,
    `C compiler: ${report.compiler ?? 'none here, so the column is empty'}.`,
    `Millions of points a second of one core's time: median [least .. greatest] of ${rounds} rounds in turns, warm; in bold the ratio of medians to plain C.`,
    '',
    ...[head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`),
    '',
    'Formed at each point:',
    '',
    ...Object.entries(forms).map(([side, what]) => `- ${side}: ${what}.`),
    '',
    `Points of a round: ${comparisons.map(pointsOf).join('; ')}.`,
  ].join('\n');
}

function cellOf(measured: Measured | undefined): string {
  if (measured === undefined) return '';
  const { median, min, max, overPlain, side } = measured;
  const rates = `${inMillions(median)} [${inMillions(min)} .. ${inMillions(max)}]`;
  return overPlain === null || side === 'plain C' ? rates : `${rates} **${ratioOf(overPlain)}**`;
}

function ratioOf(ratio: number): string {
  return ratio >= 100 ? ratio.toFixed(0) : ratio.toPrecision(2);
}

function pointsOf({ workload, sides: measured }: Comparison): string {
  return `${workload} ${measured.map(({ side, points }) => `${side} ${inMillions(points)} M`).join(', ')}`;
}

function inMillions(number: number): string {
  const millions = number / 1e6;
  return millions >= 1000 ? millions.toFixed(0) : millions.toPrecision(3);
}
