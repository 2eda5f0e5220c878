import { expect, test } from 'vitest';
import { openTestStore } from '../fixtures/files.ts';
import { chunks, keptSearch, newSearch } from '../fixtures/searches.ts';

test('a search comes back as it was kept, waiting and with nothing counted', () => {
  const store = openTestStore();
  const asked = newSearch({ idempotencyKey: 'one' });
  const { id } = store.searches.create(asked, chunks(2));
  const found = store.searches.find(id)!;
  expect(found).toMatchObject({
    ...{ idempotencyKey: 'one', specification: asked.plan.specification, question: asked.question },
    ...{ columns: asked.columns, prices: asked.prices, systems: 1, points: 36, notices: asked.notices },
    ...{ dataVersion: 'abc', engineVersion: '1', preparationSeconds: 0.25, createdAt: asked.createdAt },
    ...{ state: 'waiting', reason: null, sequence: 1, kept: 0, storingSeconds: null, finishedAt: null },
  });
  expect(found.counts).toEqual({ systems: 1, points: 0, passed: 0, passedEach: [0, 0], outside: {} });
  expect(store.searches.plan(found.number)).toEqual(asked.plan);
  expect(store.searches.findByIdempotencyKey('one')?.id).toBe(id);
});

// Null says that nobody counts: a 0 would say that nothing passed.
test.each([
  { tally: 'all' as const, passed: 0 },
  { tally: 'none' as const, passed: null },
])('what a tally of "$tally" does not count is null from the beginning', ({ tally, passed }) => {
  const store = openTestStore();
  const { plan } = newSearch();
  const specification = { ...plan.specification, tally };
  const { counts } = store.searches.create(newSearch({ plan: { ...plan, specification } }), chunks(1));
  expect(counts).toEqual({ systems: 1, points: 0, passed, passedEach: null, outside: null });
});

test('an id is short, safe in an address, and another one each time', () => {
  const store = openTestStore();
  const ids = Array.from({ length: 50 }, () => keptSearch(store).id);
  expect(new Set(ids).size).toBe(50);
  for (const id of ids) expect(id).toMatch(/^[0-9a-z]{12}$/);
});

test('the newest search comes first', () => {
  const store = openTestStore();
  const ids = [keptSearch(store).id, keptSearch(store).id, keptSearch(store).id];
  expect(store.searches.list().map((search) => search.id)).toEqual(ids.toReversed());
});

test('each change counts the sequence on, whatever it changes', () => {
  const store = openTestStore();
  const { id, number } = keptSearch(store);
  store.searches.change(number, { state: 'paused', reason: 'by hand' });
  store.searches.change(number, { notices: ['a', 'b'], kept: 7, storingSeconds: 0.5 });
  expect(store.searches.find(id)).toMatchObject({
    ...{ state: 'paused', reason: 'by hand', notices: ['a', 'b'], kept: 7, storingSeconds: 0.5, sequence: 3 },
  });
});

test('a search whose chunks cannot be kept is not kept either', () => {
  const store = openTestStore();
  const [chunk] = chunks(1);
  expect(() => store.searches.create(newSearch(), [chunk!, chunk!])).toThrow();
  expect(store.searches.list()).toEqual([]);
});

test('what is unknown is null', () => {
  const store = openTestStore();
  expect(store.searches.find('nothing')).toBeNull();
  expect(store.searches.findByIdempotencyKey('nothing')).toBeNull();
});

test('concluding a search keeps the last change and lets its outcomes go', () => {
  const store = openTestStore();
  const { id, number } = keptSearch(store);
  const { counts } = store.searches.find(id)!;
  store.ledger.take(number, 0, new Uint8Array(8), { counts, activeSeconds: 1 });
  store.searches.conclude(number, { state: 'done', kept: 3 });
  expect(store.searches.find(id)).toMatchObject({ state: 'done', kept: 3 });
  expect(store.ledger.outcomeAfter(number, null)).toBeNull();
});
