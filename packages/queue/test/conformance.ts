import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { ChunkQueue, Report } from '../src/index.ts';
import { collector, planOf, taskOf } from './fixtures/tasks.ts';

/** A queue under test with scoring threads at work on it. */
export interface Opened {
  queue: ChunkQueue;
  close(): Promise<void>;
}

type Done = Extract<Report, { kind: 'done' }>;
const ordinals = (reports: Report[]) => reports.map((one) => one.ordinal).sort((a, b) => a - b);

/** The promise of ChunkQueue, for every adapter. `open` starts it with obedientThread and two threads. */
export function conformance(name: string, open: () => Promise<Opened>): void {
  describe(`${name} keeps the promise of a chunk queue`, () => {
    let opened: Opened;
    let queue: ChunkQueue;
    let seen: ReturnType<typeof collector>;
    beforeEach(async () => {
      opened = await open();
      queue = opened.queue;
      seen = collector(queue);
    });
    afterEach(() => opened.close());

    /** The ids of two threads that score two chunks of a search at the same time. */
    async function pairOfThreads(searchId: string): Promise<number[]> {
      await queue.announce(searchId, planOf('pair'));
      await Promise.all([0, 1].map((ordinal) => queue.send(taskOf(searchId, ordinal))));
      const reports = (await seen.of(searchId, 2)) as Done[];
      return reports.map(({ outcome }) => outcome.passedEach![1]!).sort((a, b) => a - b);
    }

    test('a task reaches a thread whole, and its outcome comes back to the last bit', async () => {
      await queue.announce('whole', planOf('score'));
      await queue.send(taskOf('whole', 4, { cutOff: 0.1 + 0.2 }));
      const [report] = (await seen.of('whole', 1)) as [Done];
      expect(report).toMatchObject({ kind: 'done', searchId: 'whole', ordinal: 4, scoringSeconds: 0.5 });
      const { outcome } = report;
      expect(outcome.points).toBe(1005);
      expect(outcome.passed).toBe(JSON.stringify(planOf('score')).length);
      expect(outcome.best).toEqual(Float64Array.of(0.30000000000000004, 7, 0, Number.NaN, 1, 2));
      expect(outcome.bestOfSystems).toEqual(new Float64Array(0));
    });

    test('of many tasks each is reported, and no thread reads a plan twice', async () => {
      await queue.announce('many', planOf('score'));
      await queue.announce('many', planOf('score'));
      await Promise.all(Array.from({ length: 60 }, (_, ordinal) => queue.send(taskOf('many', ordinal))));
      const reports = (await seen.of('many', 60)) as Done[];
      expect(ordinals(reports)).toEqual(Array.from({ length: 60 }, (_, ordinal) => ordinal));
      expect(new Set(reports.map(({ outcome }) => outcome.passedEach![0]))).toEqual(new Set([1]));
    });

    test('scoring that throws is reported as failed with its reason, and the next task is scored', async () => {
      await queue.announce('bad', planOf('throw'));
      await queue.announce('good', planOf('score'));
      await queue.send(taskOf('bad', 3));
      expect(await seen.of('bad', 1)).toEqual([
        { kind: 'failed', searchId: 'bad', ordinal: 3, reason: 'chunk 3 cannot be scored' },
      ]);
      await queue.send(taskOf('good', 0));
      expect((await seen.of('good', 1))[0]?.kind).toBe('done');
    });

    test('a thread that dies fails its task alone and is replaced', async () => {
      await queue.announce('deadly', planOf('die'));
      await queue.announce('good', planOf('score'));
      await Promise.all([0, 1, 2].map((ordinal) => queue.send(taskOf('deadly', ordinal))));
      const deaths = await seen.of('deadly', 3);
      expect(deaths.map((one) => one.kind)).toEqual(['failed', 'failed', 'failed']);
      await Promise.all([0, 1, 2, 3].map((ordinal) => queue.send(taskOf('good', ordinal))));
      expect((await seen.of('good', 4)).map((one) => one.kind)).toEqual(['done', 'done', 'done', 'done']);
    });

    test('a search that is withdrawn frees its threads, which stay warm; nothing more comes of it', async () => {
      const before = await pairOfThreads('before');
      expect(new Set(before).size).toBe(2);
      await queue.announce('endless', planOf('spin'));
      await Promise.all([0, 1, 2, 3].map((ordinal) => queue.send(taskOf('endless', ordinal))));
      await queue.withdraw('endless');
      const stopped = seen.reports.filter((one) => one.searchId === 'endless');
      expect(ordinals(stopped)).toEqual([0, 1, 2, 3]);
      expect(new Set(stopped.map((one) => one.kind))).toEqual(new Set(['stopped']));

      expect(await pairOfThreads('after')).toEqual(before);
      expect(seen.reports.filter((one) => one.searchId === 'endless')).toHaveLength(4);
    });

    test('other searches go on while one is withdrawn', async () => {
      await queue.announce('endless', planOf('spin'));
      await queue.announce('other', planOf('score'));
      await queue.send(taskOf('endless', 0));
      await queue.send(taskOf('other', 0));
      expect((await seen.of('other', 1))[0]?.kind).toBe('done');
      await queue.withdraw('endless');
      await queue.send(taskOf('other', 1));
      expect((await seen.of('other', 2)).map((one) => one.kind)).toEqual(['done', 'done']);
    });

    test('a search that was withdrawn and announced again is scored', async () => {
      await queue.announce('again', planOf('score'));
      await queue.send(taskOf('again', 0));
      await queue.withdraw('again');
      await queue.announce('again', planOf('score'));
      await queue.send(taskOf('again', 1, { attempt: 2 }));
      // The first task may have been scored all the same, and then counts.
      const done = () => seen.reports.some((one) => one.kind === 'done' && one.ordinal === 1);
      await expect.poll(done, { timeout: 60_000 }).toBe(true);
    });

    test('withdrawing what was never announced is harmless', async () => {
      await queue.withdraw('unheard-of');
      expect(seen.reports).toEqual([]);
    });

    test('a task of a search that was not announced is refused', async () => {
      await expect(queue.send(taskOf('unheard-of', 0))).rejects.toThrow('not announced');
    });

    test('the scoring threads present are counted', async () => {
      await expect.poll(() => queue.workers(), { timeout: 60_000 }).toBe(2);
    });

    test('closing ends while threads are busy, and nothing is reported afterwards', async () => {
      await queue.announce('endless', planOf('spin'));
      await Promise.all([0, 1, 2].map((ordinal) => queue.send(taskOf('endless', ordinal))));
      await opened.close();
      expect(seen.reports).toEqual([]);
    });
  });
}
