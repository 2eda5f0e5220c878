import { readFileSync } from 'node:fs';
import { scoreChunk, scoreReference } from '@tiegel/engine';
import { embeddedQueue } from '@tiegel/queue';
import { redisQueue } from '@tiegel/queue/redis';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { startWorker } from '../fixtures/processes.ts';
import { type RedisServer, redisIsHere, redisServer } from '../fixtures/redisServer.ts';
import { exhaustive, type Found } from './independent/exhaustive.ts';
import { referenceData } from './independent/referenceData.ts';
import { searchFixtures } from './independent/searchFixtures.ts';
import { cliVariant } from './variants/cliVariant.ts';
import { engineVariant } from './variants/engineVariant.ts';
import { searchesVariant } from './variants/searchesVariant.ts';
import type { Variant } from './variants/variant.ts';

const data = referenceData();
const threadFile = new URL(import.meta.resolve('@tiegel/search/scoringThread'));

const variants: [name: string, open: () => Variant][] = [
  ['the plain search itself, run now', () => plainVariant],
  ['reference scorer', () => engineVariant(scoreReference, (chunks) => chunks)],
  ['scorer of the searches', () => engineVariant(scoreChunk, (chunks) => chunks)],
  [
    'scorer of the searches, chunks backwards',
    () => engineVariant(scoreChunk, (chunks) => chunks.toReversed()),
  ],
  ['one thread', () => searchesVariant(() => embeddedQueue({ threadFile, threads: 1 }))],
  ['three threads', () => searchesVariant(() => embeddedQueue({ threadFile, threads: 3 }))],
  ['terminal', () => cliVariant([])],
];

const plainVariant: Variant = {
  find: async (file) => exhaustive(JSON.parse(readFileSync(file, 'utf8')), data),
};

for (const [name, open] of variants) describe(name, () => compareAll(open));

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
  describe('terminal', () => compareAll(() => cliVariant([], { REDIS_URL: redis.url })));
  describe('in this process', () => compareAll(() => searchesVariant(() => redisQueue({ url: redis.url }))));
});

/** Every specification of the folder, on one path: the same counts and candidates as the exhaustive search. */
function compareAll(open: () => Variant): void {
  let variant: Variant;
  beforeAll(() => {
    variant = open();
  });
  afterAll(() => variant.close?.());
  for (const { name, specification, expected } of searchFixtures()) {
    test(name, async () => {
      expectSame(await variant.find(specification), JSON.parse(readFileSync(expected, 'utf8')));
    });
  }
}

/** Counts and compositions must be equal, scores to what floating point leaves of them. */
function expectSame(found: Found, expected: Found): void {
  expect(found.counts).toEqual(expected.counts);
  expect(found.candidates.map(([composition]) => composition)).toEqual(
    expected.candidates.map(([composition]) => composition),
  );
  for (const [index, [, score]] of found.candidates.entries()) {
    const [, right] = expected.candidates[index]!;
    if (right === null || score === null) expect(score).toBe(right);
    else expect(Math.abs(score - right)).toBeLessThanOrEqual(1e-10 * Math.max(1, Math.abs(right)));
  }
}
