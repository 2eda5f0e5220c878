import { expect, test } from 'vitest';
import { faultsIn, onlyFault, request } from '../fixtures/known.ts';

const withLimits = (limits: unknown) => request({ limits });

test('a limit needs min or max, and may have both and both equal', () => {
  expect(
    faultsIn(
      withLimits([
        { quantity: 'density', min: 7, max: 7 },
        { quantity: 'cost', max: -1 },
      ]),
    ),
  ).toEqual([]);
  expect(faultsIn(withLimits([{ quantity: 'density' }]))).toEqual([
    'specification/limit-without-bound /limits/0',
  ]);
});

test('crossed bounds are refused', () => {
  expect(faultsIn(withLimits([{ quantity: 'density', min: 8, max: 7 }]))).toEqual([
    'specification/bounds-crossed /limits/0',
  ]);
});

test('an unknown quantity is refused, and the near one named', () => {
  const fault = onlyFault(withLimits([{ quantity: 'densty', max: 8 }]));
  expect(fault.detail).toBe('There is no quantity "densty": did you mean "density"?');
  expect(fault.remedy).toContain('mixingEnthalpy');
});

test('only finite numbers are bounds', () => {
  const sent = [
    { quantity: 'density', max: JSON.parse('1e400') },
    { quantity: 'cost', min: '5' },
    { quantity: 'cost', max: null },
  ];
  expect(faultsIn(withLimits(sent))).toEqual([
    'request/wrong-value /limits/0/max',
    'request/wrong-value /limits/1/min',
    'request/wrong-value /limits/2/max',
  ]);
});

test('limits are a list of at most 64', () => {
  expect(faultsIn(withLimits({ quantity: 'density', max: 8 }))).toEqual(['request/wrong-value /limits']);
  const many = Array.from({ length: 65 }, () => ({ quantity: 'density', max: 8 }));
  expect(faultsIn(withLimits(many))).toEqual(['request/length /limits']);
  expect(faultsIn(withLimits(many.slice(1)))).toEqual([]);
});
