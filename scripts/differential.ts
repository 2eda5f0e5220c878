/**
 * Random searches through the reference and every other path, compared digit for digit:
 * npx node scripts/differential.ts [--rounds 2000] [--seed N]
 * A case that differs is printed as a line for test/fixtures/corpus.ndjson, which keeps it for good.
 * With --write the first `rounds` cases of the seed become that file.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { embeddedQueue } from '@tiegel/queue';
import { corpusFile } from '../test/differential/corpus.ts';
import { differenceOf, truthOf } from '../test/differential/differences.ts';
import { paths } from '../test/differential/paths.ts';
import { queuePath } from '../test/differential/queuePath.ts';
import { randomCase } from '../test/differential/randomCase.ts';

const { values } = parseArgs({
  options: {
    rounds: { type: 'string', default: '2000' },
    seed: { type: 'string' },
    write: { type: 'boolean', default: false },
  },
});
const rounds = Number(values.rounds);
const seed = Number(values.seed ?? Math.floor(Math.random() * 2 ** 32));
if (!Number.isSafeInteger(rounds) || rounds < 1 || !Number.isSafeInteger(seed)) {
  console.error('Give whole numbers: npx node scripts/differential.ts [--rounds 2000] [--seed N] [--write]');
  process.exit(1);
}

async function compareAll(): Promise<number> {
  const threadFile = new URL(import.meta.resolve('@tiegel/search/scoringThread'));
  const queue = embeddedQueue({ threadFile, threads: 2 });
  const all = [...paths, queuePath('two threads', queue)];
  let [points, wrong] = [0, 0];
  for (let number = 0; number < rounds; number += 1) {
    const one = randomCase(number, seed);
    const truth = truthOf(one);
    points += truth.points;
    let differs = false;
    for (const path of all) {
      for (const tally of ['each', 'all', 'none'] as const) {
        const difference = await differenceOf(one, truth, path, tally);
        if (difference === null) continue;
        differs = true;
        console.error(difference);
      }
    }
    if (differs) {
      wrong += 1;
      console.log(JSON.stringify(one));
    }
    if ((number + 1) % 100 === 0) console.error(`${number + 1} cases, ${points} points, ${wrong} differ`);
  }
  await queue.close();
  console.error(`${rounds} cases, ${points} points, ${wrong} differ`);
  return wrong;
}

console.error(`seed ${seed}`);
if (values.write) {
  const lines = Array.from(
    { length: rounds },
    (_, number) => `${JSON.stringify(randomCase(number, seed))}\n`,
  );
  writeFileSync(corpusFile, lines.join(''));
} else if ((await compareAll()) > 0) {
  process.exitCode = 2;
}
