import { expect, test } from 'vitest';
import { rankRow } from '../../src/ask/draft/draft.ts';
import { wishOf, withAnchors, worthAt } from '../../src/ask/sample/worth.ts';

// Derringer & Suich (1980): ((y − from)/(to − from))^shape, by hand.
test('worth rises from 0 to 1 between the anchors, bent by the shape, and is held outside', () => {
  const wish = wishOf(rankRow('omega', { prefer: 'high', from: '1', to: '5', shape: '2' }));
  expect([0, 1, 2, 3, 5, 9].map((value) => worthAt(wish, value))).toEqual([0, 0, 1 / 16, 1 / 4, 1, 1]);
});

test('low mirrors it, and a target falls off on both sides', () => {
  const low = wishOf(rankRow('density', { prefer: 'low', from: '6', to: '8' }));
  expect([6, 7, 8].map((value) => worthAt(low, value))).toEqual([1, 0.5, 0]);
  const near = wishOf(rankRow('density', { prefer: 'target', target: '7', within: '2' }));
  expect([5, 6, 7, 8, 9].map((value) => worthAt(near, value))).toEqual([0, 0.5, 1, 0.5, 0]);
});

test('anchors that are not set are proposed from the sample; those that are set stay', () => {
  const values = Array.from({ length: 101 }, (_, index) => index);
  const open = withAnchors(wishOf(rankRow('omega', { prefer: 'high' })), values, 1);
  expect([open!.from, open!.to]).toEqual([5, 95]);
  const half = withAnchors(wishOf(rankRow('omega', { prefer: 'high', to: '40' })), values, 1);
  expect([half!.from, half!.to]).toEqual([5, 40]);
  expect(withAnchors(wishOf(rankRow('omega')), [null, null], 1)).toBeNull();
});

test('proposed anchors are never equal, whatever the sample', () => {
  const same = withAnchors(wishOf(rankRow('omega', { prefer: 'high' })), [3, 3, 3], 0.5);
  expect(same!.to!).toBeGreaterThan(same!.from!);
});
