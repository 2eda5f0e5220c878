import type { Outcome, Tally } from '@tiegel/contract';
import { embeddedQueue } from '@tiegel/queue';
import { redisQueue } from '@tiegel/queue/redis';
import { quantities } from '@tiegel/screening';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startWorker } from '../fixtures/processes.ts';
import { type RedisServer, redisIsHere, redisServer } from '../fixtures/redisServer.ts';
import { until } from '../fixtures/until.ts';
import { corpus } from './corpus.ts';
import { differenceOf, truthOf } from './differences.ts';
import { type Path, paths } from './paths.ts';
import { queuePath } from './queuePath.ts';

const cases = corpus();
const tallies = ['each', 'all', 'none'] as const;
const threadFile = new URL(import.meta.resolve('@tiegel/search/scoringThread'));
let truths: Outcome[];

beforeAll(() => {
  truths = cases.map(truthOf);
});

test('there are at least 200 cases, and every quantity is limited and ranked in some', () => {
  expect(cases.length).toBeGreaterThanOrEqual(200);
  const ids = quantities.map(({ id }) => id);
  const of = (list: 'limits' | 'rank') =>
    new Set(cases.flatMap(({ specification }) => specification[list].map(({ quantity }) => quantity)));
  expect(ids.filter((id) => !of('limits').has(id))).toEqual([]);
  expect(ids.filter((id) => !of('rank').has(id))).toEqual([]);
  expect(of('limits').has('merit') && of('rank').has('merit')).toBe(true);
});

test('most cases are about something: some points pass and some do not', () => {
  const telling = truths.filter(({ passed, points }) => passed! > 0 && passed! < points);
  expect(telling.length).toBeGreaterThan(cases.length / 2);
});

test.each(tallies)(
  'the scorer of the searches, tally %s: every case as the reference finds it',
  async (tally) => {
    expect(await differencesOn(paths[0]!, () => tally)).toEqual([]);
  },
);

test.each(paths.slice(1))('$name: every case as the reference finds it', async (path) => {
  expect(await differencesOn(path, inTurn)).toEqual([]);
});

test('two threads: every case as the reference finds it, digit for digit', async () => {
  const queue = embeddedQueue({ threadFile, threads: 2 });
  try {
    expect(await differencesOn(queuePath('two threads', queue), inTurn)).toEqual([]);
  } finally {
    await queue.close();
  }
});

describe.skipIf(!redisIsHere())('through BullMQ on a real Redis, two worker processes', () => {
  let redis: RedisServer;
  const workers: ReturnType<typeof startWorker>[] = [];
  beforeAll(async () => {
    redis = await redisServer({ password: 'a password of the tests' });
    for (let worker = 0; worker < 2; worker++) workers.push(startWorker({ redisUrl: redis.url, workers: 1 }));
  });
  afterAll(async () => {
    await Promise.all(workers.map((worker) => worker.stop()));
    await redis.close();
  });

  test('every case as the reference finds it, digit for digit', async () => {
    const queue = redisQueue({ url: redis.url });
    try {
      await until('both workers are there', async () => (await queue.workers()) === 2);
      expect(await differencesOn(queuePath('BullMQ', queue), inTurn)).toEqual([]);
    } finally {
      await queue.close();
    }
  });
});

/** One tally for each case is enough where the scorer of the searches has been through all of them. */
function inTurn(number: number): Tally {
  return tallies[number % tallies.length]!;
}

async function differencesOn(path: Path, tallyOf: (number: number) => Tally): Promise<string[]> {
  const found: string[] = [];
  for (const [number, one] of cases.entries()) {
    const difference = await differenceOf(one, truths[number]!, path, tallyOf(number));
    if (difference !== null) found.push(difference);
  }
  return found;
}
