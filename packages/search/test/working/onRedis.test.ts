import { redisQueue, redisWorker } from '@tiegel/queue/redis';
import { openStore } from '@tiegel/store';
import { describe, expect, onTestFinished, test } from 'vitest';
import { redisIsHere, redisServer } from '../../../../test/fixtures/redisServer.ts';
import { candidateColumns, openSearches, type Searches } from '../../src/index.ts';
import { answer, candidatesOf, question } from '../fixtures/questions.ts';

const expected = answer(question());
const failing = new URL('../fixtures/failingThread.ts', import.meta.url);
const scoring = new URL('../../src/working/scoringThread.ts', import.meta.url);

describe.skipIf(!redisIsHere())('on a real Redis', () => {
  /** Searches on a Redis of their own, and workers to be started. */
  async function laboratoryOnRedis() {
    const redis = await redisServer();
    onTestFinished(() => redis.close());
    const queue = redisQueue({ url: redis.url });
    onTestFinished(() => queue.close());
    const store = openStore({ file: null, columns: candidateColumns });
    const searches = await openSearches({ store, queue });
    onTestFinished(async () => {
      await searches.close();
      store.close();
    });
    function worker(threadFile: URL) {
      const one = redisWorker({ url: redis.url, threadFile, threads: 1 });
      onTestFinished(() => one.close(0));
      return one;
    }
    return { redis, searches, queue, worker };
  }

  function expectDone(searches: Searches, id: string): void {
    expect(searches.view(id)).toMatchObject({ state: 'done', counts: expected.counts });
    expect(candidatesOf(searches, id).map(({ score }) => score)).toEqual(expected.scores);
  }

  test('a search that failed goes on when it is resumed: its jobs are none that Redis still keeps', async () => {
    const { searches, worker } = await laboratoryOnRedis();
    const broken = worker(failing);
    const { id } = await searches.submit(question());
    expect(await searches.finished(id)).toMatchObject({
      state: 'failed',
      reason: expect.stringContaining('memory of the worker is broken'),
    });
    await broken.close(0);
    worker(scoring);
    searches.resume(id);
    await searches.finished(id);
    expectDone(searches, id);
  });

  test('of a search that is cancelled while it is announced Redis keeps neither plan nor jobs', async () => {
    const { redis, searches, queue, worker } = await laboratoryOnRedis();
    worker(scoring);
    const { announce } = queue;
    queue.announce = (id, plan) => {
      queue.announce = announce;
      searches.cancel(id);
      return announce(id, plan);
    };
    const { id } = await searches.submit(question());
    // It is handed out in turn: once it is done the first one is no concern any more.
    const other = await searches.submit(question());
    await searches.finished(other.id);
    expectDone(searches, other.id);
    expect(searches.view(id).state).toBe('cancelled');
    expect(await redis.keys(`tiegel:chunks:${other.id}.*`)).not.toEqual([]);
    expect(await redis.keys(`tiegel:plan:${id}`)).toEqual([]);
    expect(await redis.keys(`tiegel:chunks:${id}.*`)).toEqual([]);
  });
});
