/**
 * Kills the api, workers and Redis with SIGKILL at random moments of a search, again and again, and
 * compares each result with that of an undisturbed run: npx node scripts/faults.ts [--rounds 10] [--seed N]
 */
import { parseArgs } from 'node:util';
import { embeddedInstallation } from '../test/faults/installation.ts';
import { type Kind, kinds } from '../test/faults/kinds.ts';
import { round, type Undisturbed, undisturbed } from '../test/faults/round.ts';
import { randomFrom } from '../test/fixtures/randomFrom.ts';

const { values } = parseArgs({ options: { rounds: { type: 'string' }, seed: { type: 'string' } } });
const rounds = Number(values.rounds ?? 10);
const seed = Number(values.seed ?? Math.floor(Math.random() * 2 ** 32));
if (!Number.isSafeInteger(rounds) || rounds < 1 || !Number.isSafeInteger(seed)) {
  console.error('Give whole numbers: npx node scripts/faults.ts [--rounds 10] [--seed N]');
  process.exit(1);
}
const random = randomFrom(seed);

async function calmRun(): Promise<Undisturbed> {
  const installation = await embeddedInstallation();
  const calm = await undisturbed(installation.url());
  await installation.close();
  return calm;
}

async function repeat(kind: Kind, calm: Undisturbed): Promise<void> {
  const installation = await kind.open();
  try {
    for (let number = 1; number <= rounds; number += 1) {
      const share = await round(installation, kind, random, calm);
      console.log(`${kind.title}: kill ${number} at ${(share * 100).toFixed(1)} %, the same result`);
    }
  } catch (error) {
    console.error(installation.output());
    throw error;
  } finally {
    await installation.close();
  }
}

console.log(`seed ${seed}, ${rounds} kills of each kind`);
const calm = await calmRun();
const { counts, candidates } = calm.expected;
console.log(`undisturbed: ${counts.points} points, ${candidates.length} candidates`);
for (const kind of kinds) await repeat(kind, calm);
