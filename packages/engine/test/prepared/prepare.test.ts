import { ProblemError } from '@tiegel/contract';
import { factsFor } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { engineVersion, prepare } from '../../src/index.ts';
import { planOf } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

test('the plan of another engine version is refused, and both versions are named', () => {
  const plan = { ...planOf(specificationWith()), engineVersion: 'another' };
  try {
    prepare(plan);
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(ProblemError);
    const [fault] = (error as ProblemError).faults;
    expect(fault!.code).toBe('plan/engine-version');
    expect(fault!.detail).toContain('another');
    expect(fault!.detail).toContain(engineVersion);
  }
});

test('facts of other elements than the grid has are a mistake of the caller', () => {
  expect(() => prepare(planOf(specificationWith(), factsFor(['Al', 'Co'])))).toThrow(RangeError);
});

test('a quantity that is limited twice is one output', () => {
  const limits = [
    { quantity: 'density', max: 9 },
    { quantity: 'omega', min: 1 },
    { quantity: 'density', min: 5 },
  ];
  const prepared = prepare(planOf(specificationWith({ limits })));
  expect(prepared.limited).toEqual(['density', 'omega']);
  expect(prepared.limits.map(({ output }) => output)).toEqual([0, 1, 0]);
});
