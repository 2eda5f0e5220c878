/**
 * `npm run bench [-- --json] [-- --rounds N]`: points a second of the reference and of the fast
 * scorer. The report goes to stdout, progress to stderr. Exit 2 when the two disagree.
 */
import { parseArgs } from 'node:util';
import { bench, Disagreement } from '../packages/engine/bench/bench.ts';
import { tableOf } from '../packages/engine/bench/table.ts';

const { values } = parseArgs({
  options: { json: { type: 'boolean', default: false }, rounds: { type: 'string', default: '5' } },
});
const rounds = Number(values.rounds);

if (!Number.isInteger(rounds) || rounds < 1) {
  console.error('--rounds takes a whole number of at least 1.');
  process.exitCode = 1;
} else {
  try {
    const report = bench(rounds, (line) => console.error(line));
    console.log(values.json ? JSON.stringify(report, null, 2) : tableOf(report));
  } catch (error) {
    if (!(error instanceof Disagreement)) throw error;
    console.error(error.message);
    process.exitCode = 2;
  }
}
