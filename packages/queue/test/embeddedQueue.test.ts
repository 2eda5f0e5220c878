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
