import { expect, test } from 'vitest';
import { handQueue } from '../fixtures/handQueue.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { answer, candidatesOf, question } from '../fixtures/questions.ts';
import { refused } from '../fixtures/refused.ts';
import { until } from '../fixtures/until.ts';

// 1,400 points kept: some 35 kB an outcome, 200 kB of candidates.
const request = question({ limits: [], keep: 1400 });
const expected = answer(request);

test('on a full disk a search is paused with the reason, and goes on when there is room; nothing is lost', async () => {
  const queue = handQueue({ eager: true });
  const warnings: string[] = [];
  const warn = (text: string) => warnings.push(text);
  const full = await laboratory({ queue, warn, store: { maximumBytes: 150_000 } });
  const { id } = await full.searches.submit(request);
  await expect(full.searches.finished(id)).rejects.toThrow(refused('store/full'));
  const view = full.searches.view(id);
  expect(view.state).toBe('paused');
  expect(view.reason).toMatch(/cannot grow.*Make room on the disk/);
  expect(full.searches.list()[0]).toEqual(view);
  expect(warnings).toEqual([`Search ${id} stands still: ${view.reason}`]);

  full.searches.resume(id);
  await expect(full.searches.finished(id)).rejects.toThrow(refused('store/full'));
  await full.close();

  const roomy = await laboratory({ file: full.file, queue: handQueue({ eager: true }) });
  if (roomy.searches.view(id).state === 'paused') roomy.searches.resume(id);
  await roomy.searches.finished(id);
  expect(roomy.searches.view(id)).toMatchObject({ state: 'done', counts: expected.counts });
  expect(candidatesOf(roomy.searches, id).map(({ score }) => score)).toEqual(expected.scores);
});

test('a search that does not fit on the disk at all is refused, and leaves nothing', async () => {
  const { searches } = await laboratory({ store: { maximumBytes: 150_000 }, pointsPerChunk: 1 });
  const fine = question({ fractions: { step: 1, min: 5, max: 35 } });
  await expect(searches.submit(fine)).rejects.toThrow(refused('store/full'));
  expect(searches.list()).toEqual([]);
});

test('one search that the store refuses does not stop another', async () => {
  const queue = handQueue({ present: 1 });
  const { searches } = await laboratory({ queue, store: { maximumBytes: 220_000 } });
  const large = await searches.submit(request);
  const small = await searches.submit(question({ keep: 1, keepPerSystem: 0 }));
  await until(() => queue.waiting.length > 0);
  const end = expect(searches.finished(large.id)).rejects.toThrow(refused('store/full'));
  queue.eager = true;
  queue.score();
  await end;
  expect((await searches.finished(small.id)).state).toBe('done');
  searches.cancel(large.id);
  expect(searches.view(large.id)).toMatchObject({ state: 'cancelled', reason: null });
});
