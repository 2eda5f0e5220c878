import { afterAll, beforeAll, describe, test } from 'vitest';
import { randomFrom } from '../fixtures/randomFrom.ts';
import { redisIsHere } from '../fixtures/redisServer.ts';
import { embeddedInstallation, type Installation } from './installation.ts';
import { kinds } from './kinds.ts';
import { round, type Undisturbed, undisturbed } from './round.ts';

const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 32));

/** One of each kind; more of the same: npx node scripts/faults.ts --rounds 10. */
describe(`kill -9 at random moments (SEED=${seed})`, () => {
  const random = randomFrom(seed);
  const installations = new Map<() => Promise<Installation>, Installation>();
  let calm: Undisturbed;
  beforeAll(async () => {
    const installation = await embeddedInstallation();
    installations.set(embeddedInstallation, installation);
    calm = await undisturbed(installation.url());
  });
  afterAll(async () => {
    for (const installation of installations.values()) await installation.close();
  });

  for (const kind of kinds) {
    const missing = kind.open !== embeddedInstallation && !redisIsHere();
    test.skipIf(missing)(
      `${kind.title}: the result is that of an undisturbed run`,
      async () => {
        const installation = installations.get(kind.open) ?? (await kind.open());
        installations.set(kind.open, installation);
        try {
          await round(installation, kind, random, calm);
        } catch (error) {
          throw new Error(`SEED=${seed}: ${(error as Error).message}\n${installation.output()}`, {
            cause: error,
          });
        }
      },
      300_000,
    );
  }
});
