/**
 * `npm run bench [-- --json] [-- --rounds N] [-- --only NAME] [-- --seconds S]`: points a second of
 * every scorer beside a plain C loop on each workload, then whole searches on one and two workers
 * ('scaling') that last about S seconds on two ('two-workers': on two alone), and what a chunk costs. The report goes to stdout, progress to stderr.
 * Exit 2 when two scorers disagree.
 */
import { parseArgs } from 'node:util';
import { atMostTableOf, boundsAndTimes } from '../packages/engine/bench/atMost.ts';
import { bench } from '../packages/engine/bench/bench.ts';
import { Disagreement } from '../packages/engine/bench/compare.ts';
import { rankings, rankingsTableOf } from '../packages/engine/bench/rankings.ts';
import { tableOf } from '../packages/engine/bench/table.ts';
import { workloads } from '../packages/engine/bench/workloads.ts';
import { chunkCosts } from '../packages/search/bench/chunkCost.ts';
import { commands } from '../packages/search/bench/commands.ts';
import { freshRuns } from '../packages/search/bench/freshProcess.ts';
import { scaling } from '../packages/search/bench/scaling.ts';
import { chunkCostTableOf, freshTableOf, scalingTableOf } from '../packages/search/bench/scalingTable.ts';

const { values } = parseArgs({
  options: {
    json: { type: 'boolean', default: false },
    rounds: { type: 'string', default: '5' },
    seconds: { type: 'string', default: '2' },
    only: { type: 'string', multiple: true },
  },
});
/** A ranking that takes longer is ended, s. */
const mostSecondsOfRanking = 30;
const rounds = Number(values.rounds);
const seconds = Number(values.seconds);
const names = [
  ...workloads.map(({ name }) => name),
  'scaling',
  'two-workers',
  'rankings',
  'at-most',
  ...commands.map(({ name }) => name),
];
const always = names.filter(
  (name) =>
    !['two-workers', 'rankings', 'at-most'].includes(name) &&
    !commands.find((one) => one.name === name)?.onlyWhenAsked,
);
const chosen = values.only ?? always;

function fault(): string | null {
  if (!Number.isInteger(rounds) || rounds < 1) return '--rounds takes a whole number of at least 1.';
  if (!(seconds > 0 && seconds <= 3600)) return '--seconds takes a number above 0 and at most 3600.';
  if (chosen.every((name) => names.includes(name))) return null;
  return `--only takes the name of a workload: ${names.join(', ')}.`;
}

async function measure(): Promise<void> {
  const log = (line: string) => console.error(line);
  const of = workloads.filter(({ name }) => chosen.includes(name));
  const scorers = of.length > 0 ? bench(rounds, log, of) : null;
  const workers = chosen.includes('scaling') ? await scaling(seconds, rounds, log) : null;
  const two = chosen.includes('two-workers') ? await scaling(seconds, rounds, log, [2]) : null;
  const costs = chosen.includes('scaling') ? await chunkCosts() : null;
  const fresh = commands.filter(({ name }) => chosen.includes(name));
  const runs = fresh.length > 0 ? await freshRuns(fresh, rounds, log) : null;
  const ranked = chosen.includes('rankings') ? rankings(mostSecondsOfRanking, log) : null;
  const bounds = chosen.includes('at-most') ? boundsAndTimes(log) : null;
  if (values.json) {
    console.log(JSON.stringify({ scorers, workers, two, costs, runs, ranked, bounds }, null, 2));
    return;
  }
  const tables = [
    scorers && tableOf(scorers),
    workers && scalingTableOf(workers),
    two && scalingTableOf(two),
    costs && chunkCostTableOf(costs),
    runs && freshTableOf(runs, rounds),
    ranked && rankingsTableOf(ranked, mostSecondsOfRanking),
    bounds && atMostTableOf(bounds),
  ];
  console.log(tables.filter((table) => table !== null).join('\n\n'));
}

const wrong = fault();
if (wrong !== null) {
  console.error(wrong);
  process.exitCode = 1;
} else {
  await measure().catch((error) => {
    if (!(error instanceof Disagreement)) throw error;
    console.error(error.message);
    process.exitCode = 2;
  });
}
