import { problem, type Schedule } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { answer, question } from '../fixtures/questions.ts';
import { refused } from '../fixtures/refused.ts';
import { until } from '../fixtures/until.ts';

const clock = (hoursFromNow: number) =>
  new Date(Date.now() + hoursFromNow * 3600e3).toISOString().slice(11, 16);
const later: Schedule = { hours: { zone: 'UTC', from: clock(2), to: clock(3) }, priority: 'usual' };
const always: Schedule = { hours: null, priority: 'usual' };

test('a search outside its hours waits and says so, and begins when they change', async () => {
  const { searches, queue } = await laboratory({ queue: handQueue({ eager: true }) });
  const { id } = await searches.submit(question(), { schedule: later });
  await until(() => searches.view(id).reason !== null);
  expect(searches.view(id)).toMatchObject({ state: 'waiting', schedule: later });
  expect(searches.view(id).reason).toContain(
    `from ${later.hours!.from} to ${later.hours!.to} (UTC); next at`,
  );
  expect(queue.sent).toEqual([]);
  searches.schedule(id, always);
  const view = await searches.finished(id);
  expect(view).toMatchObject({ state: 'done', reason: null, counts: answer(question()).counts });
});

test('a search that its hours leave goes to rest when its chunks are back, its clock stands, and nothing is lost', async () => {
  const { searches, queue } = await laboratory();
  const { id } = await searches.submit(question());
  await until(() => queue.sent.length > 0);
  searches.schedule(id, later);
  while (queue.waiting.length > 0) queue.score();
  await until(() => searches.view(id).state === 'waiting');
  const rested = searches.view(id);
  expect(rested.reason).toContain('It is worked on from');
  expect(rested.counts.points).toBeGreaterThan(0);
  expect(searches.view(id).seconds).toBe(rested.seconds);
  searches.schedule(id, always);
  await until(() => {
    while (queue.waiting.length > 0) queue.score();
    return searches.view(id).state === 'done';
  });
  expect(searches.view(id).counts).toEqual(answer(question()).counts);
});

test('on a full disk a search whose hours end is paused with the reason, and others go on', async () => {
  const { searches, queue, store, file } = await laboratory();
  const { id } = await searches.submit(question());
  await until(() => queue.sent.length > 0);
  const { change } = store.searches;
  let full = true;
  store.searches.change = (number, what) => {
    if (full && 'activeSeconds' in what) throw problem('store/full', { file, why: 'no space is left' });
    change(number, what);
  };
  searches.schedule(id, later);
  queue.score();
  await expect(searches.finished(id)).rejects.toThrow(refused('store/full'));
  expect(searches.view(id)).toMatchObject({
    state: 'paused',
    reason: expect.stringContaining('cannot grow'),
  });
  full = false;
  queue.eager = true;
  expect((await searches.finished((await searches.submit(question())).id)).state).toBe('done');
  searches.schedule(id, always);
  searches.resume(id);
  expect((await searches.finished(id)).counts).toEqual(answer(question()).counts);
});

test('hours survive a restart', async () => {
  const first = await laboratory({ queue: handQueue({ eager: true }) });
  const { id } = await first.searches.submit(question(), { schedule: later });
  await until(() => first.searches.view(id).reason !== null);
  const { searches } = await first.afterDeath({ queue: handQueue({ eager: true }) });
  await until(() => searches.view(id).reason !== null);
  expect(searches.view(id)).toMatchObject({ state: 'waiting', schedule: later });
});

test('of several searches those that come first are handed out before all others', async () => {
  const { searches, queue } = await laboratory();
  const ids: string[] = [];
  for (const priority of ['last', 'usual', 'first'] as const) {
    ids.push((await searches.submit(question(), { schedule: { hours: later.hours, priority } })).id);
  }
  const [last, usual, first] = ids;
  for (const [at, priority] of (['last', 'usual', 'first'] as const).entries()) {
    searches.schedule(ids[at]!, { hours: null, priority });
  }
  await until(() => {
    while (queue.waiting.length > 0) queue.score();
    return ids.every((id) => searches.view(id).state === 'done');
  });
  const order = queue.sent.map(({ searchId }) => searchId);
  // What was under way while the hours changed apart: whichever came into force first went first.
  expect(order.lastIndexOf(first!)).toBeLessThan(order.lastIndexOf(usual!));
  expect(order.lastIndexOf(usual!)).toBeLessThan(order.lastIndexOf(last!));
});
