import Database from 'better-sqlite3';
import { expect, test } from 'vitest';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { answer, candidatesOf, question } from '../fixtures/questions.ts';
import { until } from '../fixtures/until.ts';

const expected = answer(question());

/** Another program that writes into the database until it is told to end. */
function otherWriter(file: string): { end(): void } {
  const other = new Database(file);
  other.exec('begin immediate');
  return { end: () => other.close() };
}

async function lockedLaboratory() {
  const warnings: string[] = [];
  const queue = handQueue({ present: 1 });
  const one = await laboratory({
    queue,
    warn: (text) => warnings.push(text),
    store: { busyTimeoutMs: 10 },
  });
  return { ...one, warnings };
}

test('while another program writes, a search waits and says so; then it goes on by itself, with nothing scored twice', async () => {
  const { searches, queue, file, warnings } = await lockedLaboratory();
  const { id } = await searches.submit(question());
  await until(() => queue.waiting.length === 2);
  const { points } = searches.view(id).progress;
  const other = otherWriter(file);
  queue.score(1);
  await until(() => searches.view(id).reason !== null);
  const waiting = searches.view(id);
  expect(waiting).toMatchObject({ state: 'running', progress: { points } });
  expect(waiting.reason).toMatch(/^Another program is writing into the database.*goes on by itself/);
  expect(searches.list()).toMatchObject([{ state: 'running', reason: waiting.reason }]);
  expect(warnings).toEqual([`Search ${id} waits: ${waiting.reason}`]);

  queue.eager = true;
  queue.score();
  other.end();
  const view = await searches.finished(id);
  expect(view).toMatchObject({ state: 'done', reason: null, counts: expected.counts });
  expect(candidatesOf(searches, id).map(({ score }) => score)).toEqual(expected.scores);
  expect(warnings.slice(1)).toEqual([`Search ${id} goes on.`]);
  expect(new Set(queue.sent.map(({ chunk }) => chunk.ordinal)).size).toBe(queue.sent.length);
});

test('candidates are stored when another program has finished to write', async () => {
  const { searches, queue, file } = await lockedLaboratory();
  const { id } = await searches.submit(question());
  const isScored = () => searches.view(id).progress.points === expected.counts.points;
  while (!isScored()) {
    await until(() => queue.waiting.length > 0);
    queue.score(1);
  }
  // At once: nothing was stored yet.
  const other = otherWriter(file);
  await until(() => searches.view(id).reason !== null);
  expect(searches.view(id)).toMatchObject({ state: 'running', kept: 0 });
  other.end();
  expect(await searches.finished(id)).toMatchObject({ state: 'done', counts: expected.counts });
});

test('a lock that comes between looking and writing pauses nothing either', async () => {
  const { searches, queue, store, file } = await lockedLaboratory();
  const { id } = await searches.submit(question());
  await until(() => queue.waiting.length === 2);
  const { isFree } = store;
  let other: ReturnType<typeof otherWriter> | null = null;
  store.isFree = () => {
    const free = isFree();
    other ??= otherWriter(file);
    return free;
  };
  queue.score(1);
  await until(() => searches.view(id).reason !== null);
  expect(searches.view(id).state).toBe('running');
  queue.eager = true;
  other!.end();
  expect(await searches.finished(id)).toMatchObject({ state: 'done', counts: expected.counts });
});

test('a search that waits for another program can be paused when that has finished, and is not gone on with', async () => {
  const { searches, queue, file } = await lockedLaboratory();
  const { id } = await searches.submit(question());
  await until(() => queue.waiting.length === 2);
  const other = otherWriter(file);
  queue.score(1);
  await until(() => searches.view(id).reason !== null);
  other.end();
  expect(searches.pause(id)).toMatchObject({ state: 'paused', reason: null });
  queue.eager = true;
  await searches.finished((await searches.submit(question())).id);
  expect(searches.view(id).state).toBe('paused');
});
