import type { Counts } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { MERGED, openStore, type Store } from '../../src/index.ts';
import { columns, freshFile, openTestStore } from '../fixtures/files.ts';
import { chunks, keptSearch } from '../fixtures/searches.ts';

const counts: Counts = { systems: 1, points: 18, passed: 4, passedEach: [5, 6], outside: { price: 2 } };
const progress = { counts, activeSeconds: 1.5 };
const bytes = (value: number) => new Uint8Array([value, value, value]);

function outcomes(store: Store, search: number): [number, number[]][] {
  const found: [number, number[]][] = [];
  let one = store.ledger.outcomeAfter(search, null);
  while (one !== null) {
    found.push([one.ordinal, [...one.bytes]]);
    one = store.ledger.outcomeAfter(search, one.ordinal);
  }
  return found;
}

test('unfinished chunks come as they were planned, in their order, a window at a time', () => {
  const store = openTestStore();
  const { number } = keptSearch(store, 5);
  keptSearch(store, 9);
  expect(store.ledger.unfinished(number, -1, 100)).toEqual(chunks(5));
  expect(store.ledger.unfinished(number, 1, 2)).toEqual(chunks(5).slice(2, 4));
  expect(store.ledger.unfinishedCount(number)).toBe(5);
});

test('a chunk is taken once, with its outcome and how the search then stands', () => {
  const store = openTestStore();
  const { id, number, sequence } = keptSearch(store, 3);
  expect(store.ledger.take(number, 1, bytes(1), progress)).toBe(true);
  const after = store.searches.find(id)!;
  expect(after).toMatchObject({ counts, activeSeconds: 1.5, sequence: sequence + 1 });
  expect(store.ledger.take(number, 1, bytes(9), { ...progress, activeSeconds: 99 })).toBe(false);
  expect(store.searches.find(id)).toEqual(after);
  expect(outcomes(store, number)).toEqual([[1, [1, 1, 1]]]);
  expect(store.ledger.unfinished(number, -1, 9).map((chunk) => chunk.ordinal)).toEqual([0, 2]);
});

test('an outcome of a chunk that was never planned is not taken', () => {
  const store = openTestStore();
  const { number } = keptSearch(store, 2);
  expect(store.ledger.take(number, 2, bytes(1), progress)).toBe(false);
  expect(store.ledger.take(number + 1, 0, bytes(1), progress)).toBe(false);
  expect(outcomes(store, number)).toEqual([]);
});

test('merged outcomes stand in the place of those they were made from, before later ones', () => {
  const store = openTestStore();
  const { number } = keptSearch(store, 4);
  for (const ordinal of [2, 0]) store.ledger.take(number, ordinal, bytes(ordinal), progress);
  store.ledger.merge(number, bytes(50));
  store.ledger.take(number, 1, bytes(1), progress);
  expect(outcomes(store, number)).toEqual([
    [MERGED, [50, 50, 50]],
    [1, [1, 1, 1]],
  ]);
  store.ledger.merge(number, bytes(60));
  expect(outcomes(store, number)).toEqual([[MERGED, [60, 60, 60]]]);
  expect(store.ledger.unfinishedCount(number)).toBe(1);
});

test('an outcome is read back byte for byte after opening the file again', () => {
  const file = freshFile();
  const first = openStore({ file, columns });
  const { number } = keptSearch(first);
  const whole = new Uint8Array(100_000).map((_, place) => (place * 31) % 251);
  first.ledger.take(number, 0, whole, progress);
  first.close();
  const found = openTestStore(file).ledger.outcomeAfter(number, null)!;
  expect(Buffer.from(found.bytes).equals(Buffer.from(whole))).toBe(true);
});

test('failures are counted for each chunk and can be forgotten', () => {
  const store = openTestStore();
  const { number } = keptSearch(store, 2);
  expect([1, 1, 0, 1].map((ordinal) => store.ledger.countFailure(number, ordinal))).toEqual([1, 2, 1, 3]);
  store.ledger.forgetFailures(number);
  expect(store.ledger.countFailure(number, 1)).toBe(1);
  expect(store.ledger.countFailure(number, 99)).toBe(0);
});
