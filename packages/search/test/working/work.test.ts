import { expect, test } from 'vitest';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { answer, candidatesOf, everything, question } from '../fixtures/questions.ts';
import { refused } from '../fixtures/refused.ts';
import { until } from '../fixtures/until.ts';

const expected = answer(question());

/** What a search must have found, whatever befell it. */
function expectUndisturbed(searches: Awaited<ReturnType<typeof laboratory>>['searches'], id: string): void {
  expect(searches.view(id)).toMatchObject({ state: 'done', counts: expected.counts });
  expect(candidatesOf(searches, id).map(({ score }) => score)).toEqual(expected.scores);
}

test('a search waits, runs and is done; each change has a number of its own', async () => {
  const { searches, queue } = await laboratory();
  const seen: string[] = [];
  const numbers: number[] = [];
  const { id } = await searches.submit(question());
  const stop = searches.watch(id, ({ state }, sequence) => {
    if (seen.at(-1) !== state) seen.push(state);
    numbers.push(sequence);
  });
  await until(() => queue.waiting.length > 0);
  queue.eager = true;
  queue.score();
  await searches.finished(id);
  expect(seen).toEqual(['waiting', 'running', 'done']);
  expect(numbers).toEqual(numbers.toSorted((a, b) => a - b));
  expect(new Set(numbers).size).toBe(numbers.length);
  stop();
});

test('two chunks a worker are under way, and no more', async () => {
  const { searches, queue } = await laboratory({ queue: handQueue({ present: 3 }) });
  await searches.submit(question());
  await until(() => queue.waiting.length === 6);
  queue.score(2);
  await until(() => queue.sent.length === 8);
  expect(queue.waiting).toHaveLength(6);
});

test('searches take turns, a chunk each, whenever they came', async () => {
  const { searches, queue } = await laboratory({ queue: handQueue({ present: 1 }) });
  const first = await searches.submit(question());
  await until(() => queue.waiting.length === 2);
  const others = [await searches.submit(question()), await searches.submit(question())];
  const ids = [first, ...others].map(({ id }) => id);
  const before = queue.sent.length;
  for (let round = 0; round < 9; round += 1) {
    const sent = queue.sent.length;
    queue.score(1);
    await until(() => queue.sent.length > sent);
  }
  const turns = queue.sent.slice(before).map(({ searchId }) => searchId);
  for (const id of ids) expect(turns.filter((one) => one === id)).toHaveLength(3);
  expect(new Set(turns.slice(0, 3)).size).toBe(3);
});

test('a score that a kept point must reach goes with each chunk as soon as it is known', async () => {
  const { searches, queue } = await laboratory({ queue: handQueue({ eager: true }) });
  const { id } = await searches.submit(question({ keep: 5, keepPerSystem: 0 }));
  await searches.finished(id);
  const [first] = queue.sent;
  expect(first?.cutOff).toBeNull();
  expect(queue.sent.at(-1)?.cutOff).toBe(searches.candidates(id, everything).items.at(-1)?.score);
});

test('no chunk is announced twice under one number, whether lost, paused or failed in between', async () => {
  const { searches, queue } = await laboratory({ queue: handQueue({ present: 1 }) });
  const { id } = await searches.submit(question());
  await until(() => queue.waiting.length === 2);
  queue.lose();
  await until(() => queue.waiting.length === 2);
  searches.pause(id);
  searches.resume(id);
  for (let times = 0; times < 3; times += 1) {
    await until(() => queue.waiting.length === 2);
    // The chunk that failed comes next, behind the one that waits.
    if (times > 0) queue.waiting.reverse();
    queue.fail('memory of the worker is broken');
  }
  expect((await searches.finished(id)).state).toBe('failed');
  searches.resume(id);
  await until(() => queue.waiting.length === 2);
  expect(queue.sent.length).toBeGreaterThanOrEqual(10);
  const numbers = queue.sent.map(({ attempt }) => attempt);
  expect(new Set(numbers).size).toBe(numbers.length);
});

test('an outcome that comes twice counts once', async () => {
  const { searches, queue } = await laboratory();
  const { id } = await searches.submit(question());
  while (searches.view(id).state !== 'done') {
    await until(() => queue.waiting.length > 0 || searches.view(id).state === 'done');
    for (const task of [...queue.waiting]) queue.scoreTwice(task);
    queue.score();
  }
  expectUndisturbed(searches, id);
});

test('chunks that the carrier lost are handed out again', async () => {
  const { searches, queue } = await laboratory();
  const { id } = await searches.submit(question());
  for (let times = 0; times < 3; times += 1) {
    await until(() => queue.waiting.length === 4);
    queue.score(1);
    queue.lose();
  }
  queue.eager = true;
  queue.score();
  await searches.finished(id);
  expectUndisturbed(searches, id);
});

test('an outcome that comes after its chunk was lost and handed out again is taken, and the other is not', async () => {
  const { searches, queue } = await laboratory();
  const { id } = await searches.submit(question());
  await until(() => queue.waiting.length === 4);
  const late = [...queue.waiting];
  queue.lose();
  for (const task of late) queue.scoreTwice(task);
  queue.eager = true;
  await until(() => searches.view(id).state === 'done' || queue.waiting.length > 0);
  queue.score();
  await searches.finished(id);
  expectUndisturbed(searches, id);
});

test('a chunk that fails is tried again, and after three times its search fails with the reason', async () => {
  const { searches, queue } = await laboratory({ queue: handQueue({ present: 1 }) });
  const { id } = await searches.submit(question());
  for (const times of [1, 2]) {
    await until(() => queue.waiting.length === 2);
    queue.fail('memory of the worker is broken');
    expect(searches.view(id).state).toBe('running');
    expect(times).toBeLessThan(3);
    // The chunk that failed comes next, behind the one that waits.
    await until(() => queue.waiting.length === 2);
    queue.waiting.reverse();
  }
  queue.fail('memory of the worker is broken');
  const view = await searches.finished(id);
  expect(view.state).toBe('failed');
  expect(view.reason).toMatch(/failed 3 times: memory of the worker is broken\.$/);
  expect(queue.waiting).toEqual([]);

  queue.eager = true;
  searches.resume(id);
  await searches.finished(id);
  expectUndisturbed(searches, id);
});

test('a paused search hands nothing out, keeps what it has, and goes on when it is resumed', async () => {
  const { searches, queue } = await laboratory();
  const { id } = await searches.submit(question());
  await until(() => queue.waiting.length === 4);
  queue.score(2);
  expect(searches.pause(id)).toMatchObject({ state: 'paused', reason: null });
  expect(searches.pause(id).state).toBe('paused');
  expect(queue.waiting).toEqual([]);
  const { progress, seconds } = searches.view(id);
  expect(progress.points).toBeGreaterThan(0);
  const sent = queue.sent.length;
  const other = await searches.submit(question());
  await until(() => queue.waiting.length > 0);
  queue.eager = true;
  queue.score();
  await searches.finished(other.id);
  expect(queue.sent.slice(sent).some(({ searchId }) => searchId === id)).toBe(false);
  expect(searches.view(id)).toMatchObject({ progress, seconds });

  expect(searches.resume(id).state).toBe('waiting');
  await searches.finished(id);
  expectUndisturbed(searches, id);
});

test('pausing and resuming at once, again and again, does no harm', async () => {
  const { searches, queue } = await laboratory();
  const { id } = await searches.submit(question());
  for (let times = 0; times < 5; times += 1) {
    await until(() => queue.waiting.length > 0);
    queue.score(1);
    searches.pause(id);
    searches.resume(id);
  }
  await until(() => queue.waiting.length > 0);
  queue.eager = true;
  queue.score();
  await searches.finished(id);
  expectUndisturbed(searches, id);
});

test('a cancelled search is over, and what still comes of it is left alone', async () => {
  const { searches, queue, store } = await laboratory();
  const { id } = await searches.submit(question());
  await until(() => queue.waiting.length === 4);
  const [task] = queue.waiting;
  queue.score(1);
  const end = searches.finished(id);
  expect(searches.cancel(id).state).toBe('cancelled');
  const view = await end;
  expect(view.finishedAt).not.toBeNull();
  queue.scoreTwice(task!);
  expect(searches.view(id)).toEqual(view);
  expect(store.ledger.outcomeAfter(store.searches.find(id)!.number, null)).toBeNull();
  expect(searches.cancel(id)).toEqual(view);
  expect(() => searches.resume(id)).toThrow(refused('search/not-possible'));
  expect(() => searches.candidates(id, everything)).toThrow(/cancelled/);
});

test('a search that is cancelled while its candidates are stored leaves none of them', async () => {
  const { searches, queue, store } = await laboratory({ queue: handQueue({ eager: true }) });
  const { id } = await searches.submit(
    question({ keep: 5000, limits: [], fractions: { step: 2.5, min: 5, max: 50 } }),
  );
  const set = { search: store.searches.find(id)!.number, kept: 5000, columns: ['density'] };
  const stored = () => store.candidates.page(set, everything).items.length;
  await until(() => stored() > 0);
  expect(searches.view(id).state).toBe('running');
  searches.cancel(id);
  await until(() => stored() === 0);
  expect(searches.view(id)).toMatchObject({ state: 'cancelled', kept: 0 });
  expect(queue.waiting).toEqual([]);
});

test('a search that is paused while its candidates are stored, and then cancelled, leaves none of them', async () => {
  const { searches, store } = await laboratory({ queue: handQueue({ eager: true }) });
  const { id } = await searches.submit(
    question({ keep: 5000, limits: [], fractions: { step: 2.5, min: 5, max: 50 } }),
  );
  const set = { search: store.searches.find(id)!.number, kept: 5000, columns: ['density'] };
  const stored = () => store.candidates.page(set, everything).items.length;
  await until(() => stored() > 0);
  searches.pause(id);
  // Another search, from its beginning to its end: nothing goes on with the first one any more.
  await searches.finished((await searches.submit(question())).id);
  expect(stored()).toBeGreaterThan(0);
  searches.cancel(id);
  await until(() => stored() === 0);
  expect(searches.view(id)).toMatchObject({ state: 'cancelled', kept: 0 });
});

test('a search that is stopped while its plan is announced is not handed out', async () => {
  const queue = handQueue();
  const { searches } = await laboratory({ queue });
  const calls: string[] = [];
  const { announce, withdraw } = queue;
  queue.announce = async (id, plan) => {
    calls.push('announce');
    if (calls.length === 1) searches.cancel(id);
    await announce(id, plan);
    calls.push('announced');
  };
  queue.withdraw = (id) => {
    calls.push('withdraw');
    return withdraw(id);
  };
  const { id } = await searches.submit(question());
  const other = await searches.submit(question());
  await until(() => queue.waiting.length > 0);
  expect(queue.sent.map(({ searchId }) => searchId)).not.toContain(id);
  expect(searches.view(other.id)).toMatchObject({ state: 'running', reason: null });
  // Once more after it was announced: the carrier must not keep its plan.
  expect(calls.slice(0, 4)).toEqual(['announce', 'withdraw', 'announced', 'withdraw']);
});

test('without a worker a search says so, and goes on as soon as there is one', async () => {
  const { searches, queue } = await laboratory({ queue: handQueue({ present: 0, eager: true }) });
  const { id } = await searches.submit(question());
  await until(() => searches.view(id).reason !== null);
  expect(searches.view(id)).toMatchObject({ state: 'waiting', seconds: null });
  expect(searches.view(id).reason).toMatch(/No worker is present/);
  queue.present = 2;
  await searches.finished(id);
  expectUndisturbed(searches, id);
  expect(searches.view(id).reason).toBeNull();
});

test('a carrier out of reach is named, and the search goes on when it is back', async () => {
  const { searches, queue } = await laboratory();
  const { id } = await searches.submit(question());
  await until(() => queue.waiting.length === 4);
  queue.reachable = false;
  queue.score();
  await until(() => searches.view(id).reason !== null);
  expect(searches.view(id)).toMatchObject({
    state: 'running',
    reason: expect.stringContaining('it is closed'),
  });
  const { points } = searches.view(id).progress;
  expect(points).toBeGreaterThan(0);
  queue.eager = true;
  queue.reachable = true;
  await searches.finished(id);
  expectUndisturbed(searches, id);
});

test('what a listener throws surfaces by itself and does not touch the search', async () => {
  const { searches } = await laboratory({ queue: handQueue({ eager: true }) });
  const { id } = await searches.submit(question());
  const surfaced: unknown[] = [];
  const note = (error: unknown) => surfaced.push(error);
  const others = process.listeners('uncaughtException');
  process.removeAllListeners('uncaughtException').on('uncaughtException', note);
  let first = true;
  searches.watch(id, () => {
    if (first) first = false;
    else throw new Error('the listener is broken');
  });
  await searches.finished(id);
  await until(() => surfaced.length > 0);
  process.off('uncaughtException', note);
  for (const other of others) process.on('uncaughtException', other);
  expectUndisturbed(searches, id);
});
