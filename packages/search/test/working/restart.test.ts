import { openStore } from '@tiegel/store';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import { candidateColumns } from '../../src/index.ts';
import { handQueue } from '../fixtures/handQueue.ts';
import { type Laboratory, laboratory } from '../fixtures/laboratory.ts';
import { answer, candidatesOf, everything, question } from '../fixtures/questions.ts';
import { refused } from '../fixtures/refused.ts';
import { until } from '../fixtures/until.ts';

const expected = answer(question());

function expectUndisturbed({ searches }: Laboratory, id: string): void {
  expect(searches.view(id)).toMatchObject({ state: 'done', counts: expected.counts });
  expect(candidatesOf(searches, id).map(({ score }) => score)).toEqual(expected.scores);
}

async function finish(one: Laboratory, id: string): Promise<void> {
  one.queue.eager = true;
  one.queue.score();
  await one.searches.finished(id);
}

test('after an orderly end a search goes on at its unfinished chunks', async () => {
  const first = await laboratory();
  const { id } = await first.searches.submit(question());
  await until(() => first.queue.waiting.length === 4);
  first.queue.score(3);
  const waitingForIt = first.searches.finished(id);
  const { progress, seconds } = first.searches.view(id);
  await Promise.all([first.close(), expect(waitingForIt).rejects.toThrow(refused('search/closed'))]);

  const second = await laboratory({ file: first.file });
  expect(second.searches.view(id).progress).toEqual(progress);
  await until(() => second.queue.waiting.length > 0);
  const ordinals = second.queue.waiting.map(({ chunk }) => chunk.ordinal);
  expect(ordinals.some((ordinal) => ordinal < 3)).toBe(false);
  await finish(second, id);
  expectUndisturbed(second, id);
  expect(second.searches.view(id).seconds).toBeGreaterThan(seconds!);
});

test('candidates that a cancelled search left are taken away at the next start', async () => {
  const first = await laboratory();
  const { id } = await first.searches.submit(question());
  const { number } = first.store.searches.find(id)!;
  first.searches.cancel(id);
  await first.close();
  // The program died before it had taken them away.
  const set = { search: number, kept: 1, columns: ['density'] };
  const store = openStore({ file: first.file, columns: candidateColumns });
  const one = { symbols: [['Cr', 'Ni']], parts: [[1, 1]], scores: Float64Array.of(1) };
  store.candidates.insert(number, { ...one, firstRank: 1, values: { density: Float64Array.of(8) } });
  expect(store.candidates.page(set, everything).items).toHaveLength(1);
  store.close();
  const second = await laboratory({ file: first.file });
  await until(() => second.store.candidates.page(set, everything).items.length === 0);
});

test('several unfinished searches go on, and a paused one stays paused', async () => {
  const first = await laboratory();
  const ids: string[] = [];
  for (let count = 0; count < 3; count += 1) ids.push((await first.searches.submit(question())).id);
  await until(() => first.queue.waiting.length === 4);
  first.queue.score(2);
  first.searches.pause(ids[1]!);
  const second = await first.afterDeath();
  second.queue.eager = true;
  await Promise.all([ids[0]!, ids[2]!].map(second.searches.finished));
  expect(second.searches.view(ids[1]!).state).toBe('paused');
  second.searches.resume(ids[1]!);
  await second.searches.finished(ids[1]!);
  for (const id of ids) expectUndisturbed(second, id);
});

test('where nothing is to be taken up, an unfinished search rests until it is resumed', async () => {
  const first = await laboratory();
  const { id } = await first.searches.submit(question());
  await until(() => first.queue.waiting.length === 4);
  first.queue.score(2);
  const { progress } = first.searches.view(id);
  const second = await first.afterDeath({ takeUp: false });
  second.queue.eager = true;
  const other = await second.searches.submit(question());
  await second.searches.finished(other.id);
  expect(second.searches.view(id)).toMatchObject({ state: 'running', progress });
  second.searches.resume(id);
  await second.searches.finished(id);
  for (const one of [id, other.id]) expectUndisturbed(second, one);
});

test('sequence numbers go on growing over a restart', async () => {
  const first = await laboratory();
  const { id } = await first.searches.submit(question());
  await until(() => first.queue.waiting.length > 0);
  first.queue.score(1);
  let last = 0;
  first.searches.watch(id, (_, sequence) => {
    last = sequence;
  });
  await first.close();
  const second = await laboratory({ file: first.file });
  const numbers: number[] = [];
  second.searches.watch(id, (_, sequence) => numbers.push(sequence));
  await until(() => second.queue.waiting.length > 0);
  await finish(second, id);
  expect(numbers[0]).toBeGreaterThanOrEqual(last);
  expect(numbers.at(-1)).toBeGreaterThan(last);
});

test('a death while candidates are stored leads to the same candidates', async () => {
  const request = question({ keep: 5000, limits: [], fractions: { step: 2.5, min: 5, max: 50 } });
  const first = await laboratory({ queue: handQueue({ eager: true }), pointsPerChunk: 5000 });
  const { id } = await first.searches.submit(request);
  const { number } = first.store.searches.find(id)!;
  const set = { search: number, kept: 5000, columns: ['density'] };
  await until(() => first.store.candidates.page(set, everything).items.length > 0);
  expect(first.searches.view(id).state).toBe('running');
  const second = await first.afterDeath();
  await Promise.all([first, second].map(({ searches }) => searches.finished(id)));
  expect(second.searches.view(id).kept).toBeGreaterThan(5000);
  expect(candidatesOf(second.searches, id)).toHaveLength(second.searches.view(id).kept);
  expect(candidatesOf(second.searches, id)).toEqual(candidatesOf(first.searches, id));
  expect(second.queue.sent).toEqual([]);
});

test('outcomes of many chunks are kept as few, and all of them are read back', async () => {
  const first = await laboratory({ pointsPerChunk: 1 });
  const request = question({ limits: [], keep: 400, fractions: { step: 2.5, min: 5, max: 35 } });
  const { id } = await first.searches.submit(request);
  const { number } = first.store.searches.find(id)!;
  let taken = 0;
  while (taken < 600) {
    await until(() => first.queue.waiting.length > 0);
    taken += first.queue.waiting.length;
    first.queue.score();
  }
  const kept: number[] = [];
  let outcome = first.store.ledger.outcomeAfter(number, null);
  for (; outcome !== null; outcome = first.store.ledger.outcomeAfter(number, outcome.ordinal)) {
    kept.push(outcome.ordinal);
  }
  expect(kept[0]).toBe(-1);
  expect(kept.length).toBeLessThan(200);
  const second = await first.afterDeath();
  second.queue.eager = true;
  await second.searches.finished(id);
  expect(second.searches.view(id).counts).toEqual(answer(request).counts);
  expect(candidatesOf(second.searches, id).map(({ score }) => score)).toEqual(answer(request).scores);
  const ordinals = new Set(second.queue.sent.map(({ chunk }) => chunk.ordinal));
  expect(first.queue.sent.slice(0, taken).some(({ chunk }) => ordinals.has(chunk.ordinal))).toBe(false);
});

test('a search that another engine version planned fails and says so', async () => {
  const first = await laboratory();
  const { plan, question: words } = checkSearch(question(), { prices: null }, 1e9);
  const { id } = first.store.searches.create(
    {
      ...{ idempotencyKey: null, question: words, columns: [], prices: null, notices: [] },
      ...{ systems: 10, points: 1490, preparationSeconds: 0, createdAt: '2027-01-14T08:00:00.000Z' },
      plan: { ...plan, engineVersion: '0.1' },
    },
    [{ ordinal: 0, firstSystem: 0, endSystem: 10, firstPoint: 0, endPoint: null, points: 1490 }],
  );
  const second = await first.afterDeath();
  const view = await second.searches.finished(id);
  expect(view).toMatchObject({ state: 'failed', engineVersion: '0.1' });
  expect(view.reason).toMatch(/planned for engine version 0\.1/);
});

type Event = 'score' | 'score twice' | 'lose' | 'pause and resume' | 'end' | 'die' | 'out of reach' | 'fail';
const events = fc.constantFrom<Event>(
  ...(['score', 'score', 'score', 'score twice', 'lose', 'pause and resume'] as const),
  ...(['end', 'die', 'out of reach', 'fail'] as const),
);

test('whatever befalls it, a search finds the same', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(events, { minLength: 5, maxLength: 25 }), async (story) => {
      let now = await laboratory({ pointsPerChunk: 40 });
      const { id } = await now.searches.submit(question());
      const over = () => now.searches.view(id).state === 'done';
      for (const event of story) {
        const { queue, searches } = now;
        queue.reachable = true;
        await until(() => queue.waiting.length > 0 || over());
        if (over()) break;
        if (event === 'score') queue.score(3);
        if (event === 'score twice') {
          queue.scoreTwice(queue.waiting[0]!);
          queue.score(1);
        }
        if (event === 'lose') queue.lose();
        if (event === 'pause and resume') {
          searches.pause(id);
          searches.resume(id);
        }
        if (event === 'out of reach') {
          queue.reachable = false;
          queue.score();
        }
        if (event === 'fail') queue.fail('for once');
        if (event === 'end') {
          await now.close();
          now = await laboratory({ file: now.file });
        }
        if (event === 'die') {
          const next = await now.afterDeath();
          await now.close();
          now = next;
        }
        if (now.searches.view(id).state === 'failed') now.searches.resume(id);
      }
      now.queue.reachable = true;
      await finish(now, id);
      expectUndisturbed(now, id);
      await now.close();
    }),
    { numRuns: 15, seed: 20270114 },
  );
});
