/**
 * `npm run bench [-- --json] [-- --rounds N] [-- --only NAME]`: points a second of every scorer,
 * beside a plain C loop. The report goes to stdout, progress to stderr. Exit 2 when two disagree.
 */
import { parseArgs } from 'node:util';
import { bench } from '../packages/engine/bench/bench.ts';
import { Disagreement } from '../packages/engine/bench/compare.ts';
import { tableOf } from '../packages/engine/bench/table.ts';
import { workloads } from '../packages/engine/bench/workloads.ts';

const { values } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    rounds: { type: 'string', default: '5' },
    only: { type: 'string', multiple: true },
  },
});
const rounds = Number(values.rounds);
const names = workloads.map(({ name }) => name);
const chosen = workloads.filter(({ name }) => values.only?.includes(name) ?? true);

if (!Number.isInteger(rounds) || rounds < 1) {
  console.error('--rounds takes a whole number of at least 1.');
  process.exitCode = 1;
} else if (values.only && chosen.length < new Set(values.only).size) {
  console.error(`--only takes the name of a workload: ${names.join(', ')}.`);
  process.exitCode = 1;
} else {
  try {
    const report = bench(rounds, (line) => console.error(line), chosen);
    console.log(values.json ? JSON.stringify(report, null, 2) : tableOf(report));
  } catch (error) {
    if (!(error instanceof Disagreement)) throw error;
    console.error(error.message);
    process.exitCode = 2;
  }
}
