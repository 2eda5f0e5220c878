import { expect, test } from 'vitest';
import { embeddedQueue } from '../src/index.ts';
import { conformance } from './conformance.ts';
import { collector, planOf, taskOf } from './fixtures/tasks.ts';

conformance('the embedded queue', async () => {
  const queue = embeddedQueue({
    threadFile: new URL('./fixtures/obedientThread.ts', import.meta.url),
    threads: 2,
  });
  return { queue, close: () => queue.close() };
});

test('tasks for a thread file that cannot be loaded fail, each of them', async () => {
  const queue = embeddedQueue({
    threadFile: new URL('./fixtures/brokenThread.ts', import.meta.url),
    threads: 2,
  });
  const seen = collector(queue);
  await queue.announce('broken', planOf('score'));
  for (let ordinal = 0; ordinal < 5; ordinal++) {
    await queue.send(taskOf('broken', ordinal));
    const reports = await seen.of('broken', ordinal + 1);
    expect(reports.at(-1)).toMatchObject({ kind: 'failed', ordinal, reason: 'this file cannot be loaded' });
  }
  await queue.close();
});

test('a search is announced once its thread is ready for it, or could not make itself ready', async () => {
  const queue = embeddedQueue({
    threadFile: new URL('./fixtures/obedientThread.ts', import.meta.url),
    threads: 1,
  });
  const seen = collector(queue);
  for (const [number, order] of ['score', 'unready'].entries()) {
    await queue.announce(order, planOf(order));
    await queue.send(taskOf(order, 0));
    const [report] = await seen.of(order, 1);
    expect(report).toMatchObject({
      kind: 'done',
      outcome: { passedEach: [1 + number, expect.any(Number), 1 + number] },
    });
  }
  await queue.close();
});

/** A queue of so many threads, and the thread that each chunk of a search was scored by. */
function queueWithThreads(threads: number) {
  const queue = embeddedQueue({
    threadFile: new URL('./fixtures/obedientThread.ts', import.meta.url),
    threads,
  });
  const seen = collector(queue);
  const threadsOf = async (searchId: string, chunks: number) =>
    (await seen.of(searchId, chunks)).map((report) => {
      if (report.kind !== 'done') throw new Error(JSON.stringify(report));
      return report.outcome.passedEach![1];
    });
  return { queue, threadsOf };
}

test('a search whose chunks come one at a time stays with one thread, the one that is warm', async () => {
  const { queue, threadsOf } = queueWithThreads(3);
  await queue.announce('one by one', planOf('score'));
  for (let ordinal = 0; ordinal < 4; ordinal += 1) {
    await queue.send(taskOf('one by one', ordinal));
    await threadsOf('one by one', ordinal + 1);
  }
  expect(new Set(await threadsOf('one by one', 4)).size).toBe(1);
  // Chunks at the same time need another, and then the last one at work comes first again.
  await queue.announce('pair', planOf('pair'));
  await queue.send(taskOf('pair', 0));
  await queue.send(taskOf('pair', 1));
  expect(new Set(await threadsOf('pair', 2)).size).toBe(2);
  await queue.close();
});

test('more chunks than threads wait for their turn, and a close does not wait for them', async () => {
  const { queue, threadsOf } = queueWithThreads(1);
  await queue.announce('many', planOf('score'));
  for (let ordinal = 0; ordinal < 20; ordinal += 1) await queue.send(taskOf('many', ordinal));
  expect(new Set(await threadsOf('many', 20)).size).toBe(1);
  await queue.announce('endless', planOf('spin'));
  for (let ordinal = 0; ordinal < 3; ordinal += 1) await queue.send(taskOf('endless', ordinal));
  await queue.close();
});
