import { fileURLToPath } from 'node:url';
import { ProblemError } from '@tiegel/contract';
import { Worker } from 'bullmq';
import { Redis } from 'ioredis';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { childProcess, type Running } from '../../../test/fixtures/childProcess.ts';
import { type RedisServer, redisIsHere, redisServer } from '../../../test/fixtures/redisServer.ts';
import type { ChunkQueue } from '../src/index.ts';
import { redisQueue, redisWorker } from '../src/redis.ts';
import { conformance } from './conformance.ts';
import { collector, planOf, taskOf } from './fixtures/tasks.ts';

const threadFile = new URL('./fixtures/obedientThread.ts', import.meta.url);
const workerProcess = fileURLToPath(new URL('./fixtures/workerProcess.ts', import.meta.url));

/** A machine that is busy with other tests starts processes slowly. */
const patience = { timeout: 60_000 };

describe.skipIf(!redisIsHere())('on a real Redis', () => {
  let redis: RedisServer;
  beforeAll(async () => {
    redis = await redisServer();
  });
  afterAll(() => redis.close());

  conformance('the queue on Redis', async () => {
    const looking = new Redis(redis.url);
    await looking.flushall();
    looking.disconnect();
    const worker = redisWorker({ url: redis.url, threadFile, threads: 2 });
    const queue = redisQueue({ url: redis.url });
    return {
      queue,
      close: async () => {
        await queue.close();
        await worker.close(0);
      },
    };
  });
});

describe.skipIf(!redisIsHere())('when parts are killed', () => {
  const open: { close(): Promise<unknown> }[] = [];
  afterEach(async () => {
    for (const one of open.splice(0).reverse()) await one.close();
  });

  async function aRedis(options: Parameters<typeof redisServer>[0] = {}): Promise<RedisServer> {
    const redis = await redisServer(options);
    open.push(redis);
    return redis;
  }
  function aQueue(url: string, lines: string[] = []): ChunkQueue {
    const queue = redisQueue({ url, log: (_, text) => lines.push(text) });
    open.push(queue);
    return queue;
  }
  function aWorker(url: string, threads: number, env: Record<string, string> = {}): Running {
    const worker = childProcess(process.execPath, [workerProcess], {
      env: { REDIS_URL: url, THREADS: String(threads), ...env },
    });
    open.push({ close: () => worker.kill() });
    return worker;
  }
  const reached = (queue: ChunkQueue, threads: number) =>
    expect.poll(() => queue.workers(), patience).toBe(threads);
  /** Ids of the jobs that a worker has in hand. */
  const inHand = async (redis: RedisServer): Promise<string[]> => {
    const looking = new Redis(redis.url);
    const ids = await looking.lrange('tiegel:chunks:active', 0, -1);
    looking.disconnect();
    return ids;
  };

  test('the chunks of a killed worker are taken over by another', async () => {
    const redis = await aRedis();
    const queue = aQueue(redis.url);
    const seen = collector(queue);
    const doomed = aWorker(redis.url, 1);
    await reached(queue, 1);
    await queue.announce('endless', planOf('spin'));
    await queue.send(taskOf('endless', 0));
    await expect.poll(() => inHand(redis), patience).toHaveLength(1);
    const other = aWorker(redis.url, 1);
    await reached(queue, 2);
    await doomed.kill();
    await expect.poll(() => other.output(), patience).toContain('taken over');
    // The other one has it now, and only it: once it is free again it scores what follows.
    await queue.withdraw('endless');
    await queue.announce('next', planOf('score'));
    await queue.send(taskOf('next', 0));
    expect((await seen.of('next', 1))[0]?.kind).toBe('done');
    await reached(queue, 1);
  });

  test('a worker that is asked to end hands back what it does not finish, at once', async () => {
    const redis = await aRedis();
    const queue = aQueue(redis.url);
    const leaving = aWorker(redis.url, 1, { FINISH_MS: '100' });
    await reached(queue, 1);
    await queue.announce('endless', planOf('spin'));
    await queue.send(taskOf('endless', 0));
    await expect.poll(() => inHand(redis), patience).toHaveLength(1);
    await leaving.stop();
    expect(await leaving.ended).toEqual({ code: 0, signal: null });
    expect(await inHand(redis)).toEqual([]);
    expect(await queue.workers()).toBe(0);
  });

  test('a worker that is asked to end finishes what it can, and takes nothing new', async () => {
    const redis = await aRedis();
    const queue = aQueue(redis.url);
    const seen = collector(queue);
    const leaving = aWorker(redis.url, 1);
    await reached(queue, 1);
    await queue.announce('many', planOf('score'));
    await Promise.all(Array.from({ length: 200 }, (_, ordinal) => queue.send(taskOf('many', ordinal))));
    await leaving.stop();
    expect(await inHand(redis)).toEqual([]);
    aWorker(redis.url, 2);
    const reports = await seen.of('many', 200);
    expect(new Set(reports.map((one) => one.ordinal)).size).toBe(200);
    expect(reports).toHaveLength(200);
  });

  test('while Redis is gone announce and send are refused by name, nobody is present, closing ends', async () => {
    const redis = await aRedis();
    const queue = aQueue(redis.url);
    await queue.announce('search', planOf('score'));
    await redis.kill();
    const refused = [queue.send(taskOf('search', 0)), queue.announce('other', planOf('score'))];
    for (const one of refused) {
      const error = await one.catch((reason) => reason);
      expect(error).toBeInstanceOf(ProblemError);
      expect((error as ProblemError).faults[0]).toMatchObject({ code: 'queue/out-of-reach' });
      expect((error as ProblemError).faults[0]?.detail).toContain(`127.0.0.1:${redis.port}`);
    }
    expect(await queue.workers()).toBe(0);
    await queue.withdraw('search');
    await queue.close();
  });

  test('a queue that was opened before Redis reaches it as soon as it is there', async () => {
    const redis = await aRedis();
    await redis.kill();
    const queue = aQueue(redis.url);
    await expect(queue.announce('early', planOf('score'))).rejects.toThrow('out of reach');
    const seen = collector(queue);
    const worker = aWorker(redis.url, 1);
    await redis.start();
    await reached(queue, 1);
    await queue.announce('early', planOf('score'));
    await queue.send(taskOf('early', 0));
    expect((await seen.of('early', 1))[0]?.kind).toBe('done');
    expect(worker.alive()).toBe(true);
  });

  test('a Redis that comes back empty is noticed, and what is sent again is scored', async () => {
    const redis = await aRedis();
    const queue = aQueue(redis.url);
    const seen = collector(queue);
    const { promise: lost, resolve } = Promise.withResolvers<void>();
    queue.onLoss(resolve);
    await queue.announce('search', planOf('score'));
    await Promise.all([0, 1, 2].map((ordinal) => queue.send(taskOf('search', ordinal))));
    await redis.kill();
    await redis.forget();
    await redis.start();
    await lost;
    aWorker(redis.url, 2);
    await Promise.all([0, 1, 2].map((ordinal) => queue.send(taskOf('search', ordinal, { attempt: 2 }))));
    const reports = await seen.of('search', 3);
    expect(reports.map((one) => one.kind)).toEqual(['done', 'done', 'done']);
  });

  test('a Redis that comes back with its data goes on, and nothing counts as lost', async () => {
    const redis = await aRedis({ appendOnly: true });
    const queue = aQueue(redis.url);
    const seen = collector(queue);
    let losses = 0;
    queue.onLoss(() => {
      losses += 1;
    });
    await queue.announce('search', planOf('score'));
    await Promise.all(Array.from({ length: 9 }, (_, ordinal) => queue.send(taskOf('search', ordinal))));
    await redis.kill();
    await redis.start();
    aWorker(redis.url, 2);
    const reports = await seen.of('search', 9);
    expect(new Set(reports.map((one) => one.ordinal)).size).toBe(9);
    expect(losses).toBe(0);
  });

  test('a Redis that is emptied while it runs is noticed as well', async () => {
    const redis = await aRedis();
    const queue = aQueue(redis.url);
    const { promise: lost, resolve } = Promise.withResolvers<void>();
    queue.onLoss(resolve);
    await queue.announce('search', planOf('score'));
    await queue.send(taskOf('search', 0));
    const emptying = new Redis(redis.url);
    await emptying.flushall();
    emptying.disconnect();
    await lost;
  });

  test('a login works with its password, and a wrong one is told without being printed', async () => {
    const redis = await aRedis({ password: 'right:secret@1' });
    const lines: string[] = [];
    const queue = aQueue(redis.url, lines);
    const seen = collector(queue);
    const worker = aWorker(redis.url, 1);
    await reached(queue, 1);
    await queue.announce('search', planOf('score'));
    await queue.send(taskOf('search', 0));
    expect((await seen.of('search', 1))[0]?.kind).toBe('done');

    const wrong = aQueue(`redis://:wrong-secret@127.0.0.1:${redis.port}`, lines);
    const error = await wrong.announce('search', planOf('score')).catch((reason) => reason);
    expect(error).toBeInstanceOf(ProblemError);
    const intruder = aWorker(`redis://:wrong-secret@127.0.0.1:${redis.port}`, 1);
    await expect.poll(() => intruder.output(), patience).toContain('WRONGPASS');
    const everything = [...lines, error.message, worker.output(), intruder.output()].join('\n');
    expect(everything).not.toContain('secret');
  });

  test('a search that is withdrawn while a task of it is handed over stays withdrawn, and the task is refused', async () => {
    const redis = await aRedis();
    const queue = aQueue(redis.url);
    await queue.announce('search', planOf('score'));
    const sending = expect(queue.send(taskOf('search', 0))).rejects.toThrow('not announced');
    await queue.withdraw('search');
    await sending;
    const looking = new Redis(redis.url);
    expect(await looking.keys('tiegel:plan:*')).toEqual([]);
    expect(await looking.keys('tiegel:chunks:search.*')).toEqual([]);
    looking.disconnect();
  });

  test('two queues on one Redis each hear of their own searches alone', async () => {
    const redis = await aRedis();
    const [one, two] = [aQueue(redis.url), aQueue(redis.url)];
    const [first, second] = [collector(one), collector(two)];
    aWorker(redis.url, 2);
    await one.announce('ones', planOf('score'));
    await two.announce('twos', planOf('score'));
    await Promise.all([one.send(taskOf('ones', 0)), two.send(taskOf('twos', 0))]);
    await Promise.all([first.of('ones', 1), second.of('twos', 1)]);
    expect(first.reports.map((report) => report.searchId)).toEqual(['ones']);
    expect(second.reports.map((report) => report.searchId)).toEqual(['twos']);
  });

  test('an outcome that cannot be read is a chunk that failed', async () => {
    const redis = await aRedis();
    const queue = aQueue(redis.url);
    const seen = collector(queue);
    const connection = new Redis(redis.url, { maxRetriesPerRequest: null });
    const nonsense = new Worker(
      'chunks',
      async (job) => {
        await connection.set(`tiegel:outcome:${job.id}`, 'no outcome at all');
        return { kind: 'done', scoringSeconds: 1 };
      },
      { connection, prefix: 'tiegel' },
    );
    open.push({ close: () => nonsense.close().then(() => connection.quit()) });
    await queue.announce('search', planOf('score'));
    await queue.send(taskOf('search', 3));
    expect(await seen.of('search', 1)).toMatchObject([{ kind: 'failed', ordinal: 3 }]);
  });

  test('what a queue sent before it was closed is heard by the next one of the same search', async () => {
    const redis = await aRedis();
    const before = redisQueue({ url: redis.url });
    await before.announce('search', planOf('score'));
    await before.send(taskOf('search', 7));
    await before.close();
    const after = aQueue(redis.url);
    const seen = collector(after);
    await after.announce('search', planOf('score'));
    aWorker(redis.url, 1);
    expect(await seen.of('search', 1)).toMatchObject([{ kind: 'done', ordinal: 7 }]);
  });
});
