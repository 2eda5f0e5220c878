import { beforeAll, describe, test } from 'vitest';
import { redisIsHere } from '../fixtures/redisServer.ts';
import { embeddedInstallation } from './installation.ts';
import { kinds } from './kinds.ts';
import { randomFrom } from './randomFrom.ts';
import { round, type Undisturbed, undisturbed } from './round.ts';

/** More of the same: node scripts/faults.ts --rounds 10. */
const rounds = 2;
const seed = Number(process.env.SEED ?? Math.floor(Math.random() * 2 ** 32));

describe(`kill -9 at random moments (SEED=${seed})`, () => {
  const random = randomFrom(seed);
  let calm: Undisturbed;
  beforeAll(async () => {
    const installation = await embeddedInstallation();
    calm = await undisturbed(installation);
    await installation.close();
  });

  for (const kind of kinds) {
    const missing = kind.part !== 'api' && !redisIsHere();
    test.skipIf(missing)(
      `${kind.title}: the result is that of an undisturbed run`,
      async () => {
        const installation = await kind.open();
        try {
          for (let number = 0; number < rounds; number += 1) {
            await round(installation, kind, random, calm);
          }
        } catch (error) {
          throw new Error(`SEED=${seed}\n${installation.output()}`, { cause: error });
        } finally {
          await installation.close();
        }
      },
      300_000,
    );
  }
});
