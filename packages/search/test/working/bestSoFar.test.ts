import { expect, test } from 'vitest';
import { checkSearch } from '../../src/asking/check.ts';
import { bestSoFar } from '../../src/working/bestSoFar.ts';
import { laboratory } from '../fixtures/laboratory.ts';
import { answer, candidatesOf, question } from '../fixtures/questions.ts';
import { until } from '../fixtures/until.ts';

const asked = question({ rank: [{ quantity: 'density', prefer: 'low' }] });

test('the best so far becomes better and better, and in the end is the best', async () => {
  const { searches, queue } = await laboratory();
  const { id } = await searches.submit(asked);
  expect(searches.view(id).bestSoFar).toBeNull();
  await until(() => queue.waiting.length > 0);
  queue.score(1);
  const first = searches.view(id).bestSoFar;
  queue.eager = true;
  queue.score();
  await searches.finished(id);

  const { bestSoFar: found, counts } = searches.view(id);
  const scores = found!.improvements.map(({ score }) => score!);
  const points = found!.improvements.map((one) => one.points);
  expect(scores.length).toBeGreaterThan(1);
  expect(scores).toEqual([...new Set(scores)].sort((a, b) => b - a));
  expect(points).toEqual(points.toSorted((a, b) => a - b));
  expect(points.at(-1)).toBeLessThanOrEqual(counts.points);
  expect(first === null || first.score === scores[0]).toBe(true);
  const [best] = candidatesOf(searches, id);
  expect(found!.score).toBe(answer(asked).scores[0]);
  expect(found!.score).toBe(best!.score);
  const tied = candidatesOf(searches, id).filter(({ score }) => score === best!.score);
  expect(tied.map(({ composition }) => composition)).toContainEqual(found!.composition);
});

test('a restart loses nothing of how it became better', async () => {
  const before = await laboratory();
  const { id } = await before.searches.submit(asked);
  await until(() => before.queue.waiting.length > 0);
  before.queue.score(1);
  await until(() => before.queue.waiting.length > 1);
  before.queue.score(2);
  const known = before.searches.view(id).bestSoFar;
  const { searches, queue } = await before.afterDeath();
  expect(searches.view(id).bestSoFar).toEqual(known);
  await until(() => queue.waiting.length > 0);
  queue.eager = true;
  queue.score();
  await searches.finished(id);
  const { improvements } = searches.view(id).bestSoFar!;
  expect(improvements.slice(0, known?.improvements.length ?? 0)).toEqual(known?.improvements ?? []);
});

test('where only the best of each system is kept, it is the best of them; where nothing is, there is none', async () => {
  for (const [keepPerSystem, there] of [
    [1, true],
    [0, false],
  ] as const) {
    const { searches, queue } = await laboratory();
    queue.eager = true;
    const { id } = await searches.submit(question({ keep: 0, keepPerSystem }));
    await searches.finished(id);
    const best = searches.view(id).bestSoFar;
    expect(best !== null).toBe(there);
    if (there) expect(best!.score).toBe(candidatesOf(searches, id)[0]!.score);
  }
});

test('very many improvements are thinned, with the first and the last in place', async () => {
  const { plan } = checkSearch(asked, { prices: null }, 1e9);
  let best = null as ReturnType<typeof bestSoFar>;
  for (let found = 1; found <= 500; found += 1) {
    const outcome = {
      ...{ points: found, passed: null, passedEach: null, outside: null },
      ...{ best: Float64Array.of(1000 - found, 0, 0), bestOfSystems: new Float64Array() },
    };
    best = bestSoFar(outcome, plan.specification, best);
  }
  expect(best!.improvements.length).toBeLessThanOrEqual(60);
  expect(best!.improvements[0]).toEqual({ points: 1, score: 999 });
  expect(best!.improvements.at(-1)).toEqual({ points: 500, score: 500 });
});
