import { expect, test } from 'vitest';
import { check, faultsIn, request } from '../fixtures/known.ts';

const withRank = (rank: unknown) => request({ rank });
const low = { quantity: 'density', prefer: 'low', from: 6, to: 9 };

test('high, low and a target are preferences', () => {
  for (const prefer of ['high', 'low', { target: -8.5 }]) {
    expect(faultsIn(withRank([{ quantity: 'density', prefer }]))).toEqual([]);
  }
  for (const prefer of ['lowest', { target: '8' }, {}, null]) {
    expect(faultsIn(withRank([{ quantity: 'density', prefer }]))).toHaveLength(1);
  }
});

test('one to sixteen entries', () => {
  expect(faultsIn(withRank([]))).toEqual(['request/length /rank']);
  expect(faultsIn(withRank(Array.from({ length: 17 }, () => low)))).toEqual(['request/length /rank']);
  expect(faultsIn(withRank(Array.from({ length: 16 }, () => low)))).toEqual([]);
});

test('a ranking by one quantity takes no anchors, weight or shape', () => {
  expect(faultsIn(withRank([{ ...low, weight: 1, shape: 1 }]))).toEqual([
    'specification/anchor-alone /rank/0/from',
    'specification/anchor-alone /rank/0/to',
    'specification/anchor-alone /rank/0/weight',
    'specification/anchor-alone /rank/0/shape',
  ]);
});

test('several quantities need anchors: from and to, or within around a target', () => {
  const target = { quantity: 'omega', prefer: { target: 3 } };
  expect(faultsIn(withRank([low, { ...target, within: 2, weight: 0.5, shape: 2 }]))).toEqual([]);
  expect(faultsIn(withRank([{ quantity: 'cost', prefer: 'low' }, target]))).toEqual([
    'specification/anchor-missing /rank/0/from',
    'specification/anchor-missing /rank/0/to',
    'specification/anchor-missing /rank/1/within',
  ]);
});

test('an anchor of the other kind is refused', () => {
  const target = { quantity: 'omega', prefer: { target: 3 }, within: 1, from: 1 };
  expect(faultsIn(withRank([{ ...low, within: 1 }, target]))).toEqual([
    'specification/anchor-idle /rank/0/within',
    'specification/anchor-idle /rank/1/from',
  ]);
});

test('from lies below to, for high and low alike', () => {
  const crossed = (prefer: string) => ({ quantity: 'cost', prefer, from: 9, to: 6 });
  expect(faultsIn(withRank([crossed('high'), crossed('low'), { ...low, to: 6 }]))).toEqual([
    'specification/anchors-crossed /rank/0',
    'specification/anchors-crossed /rank/1',
    'specification/anchors-crossed /rank/2',
  ]);
});

test('weight, shape and within are above 0', () => {
  const target = { quantity: 'omega', prefer: { target: 3 }, within: 0 };
  expect(faultsIn(withRank([{ ...low, weight: 0, shape: -1 }, target]))).toEqual([
    'request/out-of-range /rank/0/weight',
    'request/out-of-range /rank/0/shape',
    'request/out-of-range /rank/1/within',
  ]);
});

test('the ranking is kept as written', () => {
  const rank = [low, { quantity: 'omega', prefer: { target: 3 }, within: 2, weight: 0.5 }];
  expect(check(withRank(rank)).specification.rank).toEqual(rank);
});
