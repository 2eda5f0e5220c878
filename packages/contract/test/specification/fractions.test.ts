import { expect, test } from 'vitest';
import { partsOfBounds, steps } from '../../src/index.ts';
import { check, faultsIn, onlyFault, request } from '../fixtures/known.ts';

const withFractions = (fractions: unknown) => request({ fractions });

test('equal shares need no step', () => {
  expect(check(withFractions('equimolar')).specification.fractions).toBe('equimolar');
});

test('every step of the list divides 100 and is accepted, others are not', () => {
  for (const step of steps) {
    expect(Math.abs(100 / step - Math.round(100 / step))).toBeLessThan(1e-9);
    expect(faultsIn(withFractions({ step }))).toEqual([]);
  }
  for (const step of [0, -5, 3, 0.05, 100, 5.0000001]) {
    expect(faultsIn(withFractions({ step }))).toEqual(['specification/step /fractions/step']);
  }
  expect(onlyFault(withFractions({ step: 3 })).remedy).toContain('2, 2.5, 4, 5');
});

test('the step is required', () => {
  expect(faultsIn(withFractions({ min: 5 }))).toEqual(['request/missing-key /fractions/step']);
});

test('bounds lie above 0 and up to 100', () => {
  expect(faultsIn(withFractions({ step: 5, min: 0, max: 100.5 }))).toEqual([
    'request/out-of-range /fractions/min',
    'request/out-of-range /fractions/max',
  ]);
  expect(faultsIn(withFractions({ step: 5, each: { Al: { max: 0 } } }))).toEqual([
    'request/out-of-range /fractions/each/Al/max',
  ]);
});

test('crossed bounds are refused, also where only one of them is an element’s own', () => {
  expect(faultsIn(withFractions({ step: 5, min: 30, max: 20 }))).toEqual([
    'specification/bounds-crossed /fractions',
  ]);
  expect(faultsIn(withFractions({ step: 5, each: { Al: { min: 30, max: 20 } } }))).toEqual([
    'specification/bounds-crossed /fractions/each/Al',
  ]);
  expect(faultsIn(withFractions({ step: 5, max: 35, each: { Al: { min: 40 } } }))).toEqual([
    'specification/bounds-crossed /fractions/each/Al',
  ]);
});

test('an element’s own bounds may exceed those of all', () => {
  expect(faultsIn(withFractions({ step: 5, min: 10, max: 35, each: { Al: { min: 5, max: 60 } } }))).toEqual(
    [],
  );
});

test('bounds with no step between them are refused', () => {
  expect(faultsIn(withFractions({ step: 5, min: 6, max: 9 }))).toEqual([
    'specification/bounds-between-steps /fractions',
  ]);
  expect(faultsIn(withFractions({ step: 10, each: { Al: { min: 1, max: 9 } } }))).toEqual([
    'specification/bounds-between-steps /fractions/each/Al',
  ]);
});

test('bounds off the step are rounded inwards, and it is said', () => {
  const { specification, notices } = check(
    withFractions({ step: 5, min: 7, max: 34, each: { Al: { max: 12 } } }),
  );
  expect(specification.fractions).toMatchObject({ min: 7, max: 34 });
  expect(notices).toEqual([
    'All elements: min 7 at.% is rounded inwards to 10 at.%.',
    'All elements: max 34 at.% is rounded inwards to 30 at.%.',
    'Al: max 12 at.% is rounded inwards to 10 at.%.',
  ]);
});

test('decimal noise is not rounded', () => {
  expect(partsOfBounds({ step: 0.1, min: 0.3, max: 0.7 })).toEqual({ least: 3, most: 7 });
  expect(check(withFractions({ step: 0.1, min: 0.3, max: 0.7 * 100 })).notices).toEqual([]);
});

test('an element that is present has at least one step', () => {
  expect(partsOfBounds({ step: 5, min: 1, max: 9 })).toEqual({ least: 1, most: 1 });
  expect(partsOfBounds({ step: 5, min: 1, max: 4 })).toBeNull();
});

test('bounds of an element outside the pool are ignored with a notice, even impossible ones', () => {
  const { notices } = check(withFractions({ step: 5, max: 35, each: { Ti: { min: 40 } } }));
  expect(notices).toEqual(['The bounds of Ti are ignored: it is not in the pool.']);
});

test('bounds of what is no element, and keys that are no bound, are refused by name', () => {
  expect(faultsIn(withFractions({ step: 5, each: { Xx: {}, Al: { mx: 3 } } }))).toEqual([
    'request/unknown-key /fractions/each/Al/mx',
    'specification/unknown-element /fractions/each/Xx',
  ]);
  expect(faultsIn(withFractions(JSON.parse('{"step": 5, "each": {"__proto__": {"max": 5}}}')))).toEqual([
    'specification/unknown-element /fractions/each/__proto__',
  ]);
});
