import { expect, test } from 'vitest';
import { check, faultsIn, request, symbols } from '../fixtures/known.ts';

const withComponents = (components: unknown, elements: unknown = { pool: symbols }) =>
  request({ components, elements });

test('a number is a range of one', () => {
  expect(check(withComponents(4)).specification.components).toEqual({ min: 4, max: 4 });
});

test('one to ten elements are possible', () => {
  for (const components of [1, 10, { min: 1, max: 10 }])
    expect(faultsIn(withComponents(components))).toEqual([]);
  for (const components of [0, 11]) {
    expect(faultsIn(withComponents(components))).toEqual(['request/out-of-range /components']);
  }
  expect(faultsIn(withComponents({ min: 0, max: 11 }))).toEqual([
    'request/out-of-range /components/min',
    'request/out-of-range /components/max',
  ]);
});

test('both ends of a range are needed, whole, and in order', () => {
  expect(faultsIn(withComponents({ min: 3 }))).toEqual(['request/missing-key /components/max']);
  expect(faultsIn(withComponents({ min: 3.5, max: 4 }))).toEqual(['request/wrong-value /components/min']);
  expect(faultsIn(withComponents({ min: 5, max: 4 }))).toEqual(['specification/bounds-crossed /components']);
  expect(faultsIn(withComponents('five'))).toEqual(['request/wrong-value /components']);
});

test('more components than the effective pool has are refused', () => {
  const three = { pool: ['Ni', 'Al', 'Co', 'Cr'], require: ['Fe'], forbid: ['Al', 'Co'] };
  expect(faultsIn(withComponents(3, three))).toEqual([]);
  expect(faultsIn(withComponents(4, three))).toEqual(['specification/pool-too-small /components']);
  expect(faultsIn(withComponents({ min: 4, max: 5 }, three))).toEqual([
    'specification/pool-too-small /components/min',
  ]);
});

test('a range that begins within the pool and ends beyond it runs, with a notice', () => {
  const { notices } = check(withComponents({ min: 3, max: 6 }, { pool: ['Ni', 'Al', 'Co', 'Cr'] }));
  expect(notices).toEqual(['The pool has 4 elements: alloys of up to 6 are not possible.']);
});

test('more required elements than components are refused', () => {
  const required = { pool: ['Ni', 'Al'], require: ['Co', 'Cr', 'Fe'] };
  expect(faultsIn(withComponents(2, required))).toEqual(['specification/too-many-required /components']);
  expect(faultsIn(withComponents({ min: 1, max: 2 }, required))).toEqual([
    'specification/too-many-required /components/max',
  ]);
});
