import { describe, expect, test } from 'vitest';
import {
  areSameConditions,
  bind,
  condition,
  conditionNames,
  conditions,
  conditionValue,
  divide,
  type Expression,
  evaluator,
  parseUnit,
  squareRoot,
} from '../../src/index.ts';
import { factsWith } from '../fixtures/elements.ts';

function valueUnder(formula: Expression, given: Record<string, number> = {}): number {
  const into = new Float64Array(1);
  evaluator(bind([formula], factsWith(), given)).evaluate([0], [1], 1, into);
  return into[0]!;
}

describe('conditions', () => {
  test('have the published defaults', () => {
    expect(valueUnder(condition('annealTemperature'))).toBe(1273.15);
    expect(valueUnder(condition('serviceTemperature'))).toBe(293.15);
    expect(valueUnder(condition('strainRate'))).toBe(0.001);
  });

  test('give way to what is said', () => {
    expect(valueUnder(condition('serviceTemperature'), { serviceTemperature: 77 })).toBe(77);
  });

  test('of no grain size mean no boundaries, so that a term with 1/√d is 0', () => {
    const boundaries = divide(494, squareRoot(condition('grainSize')));
    expect(valueUnder(boundaries)).toBe(0);
    expect(valueUnder(boundaries, { grainSize: 100 })).toBeCloseTo(49.4, 12);
  });

  test('that nobody knows are a mistake in the formula, named', () => {
    expect(() => conditionValue('pressure', {})).toThrow('No condition is named "pressure".');
  });

  test('each have a range that holds their default, and a unit that can be read', () => {
    for (const name of conditionNames) {
      const { range, unit, default: usual, label } = conditions[name];
      expect(range.min).toBeLessThan(range.max);
      if (usual !== null) expect(usual).toBeGreaterThanOrEqual(range.min);
      if (usual !== null) expect(usual).toBeLessThanOrEqual(range.max);
      expect(() => parseUnit(unit)).not.toThrow();
      expect(label).not.toBe('');
    }
  });
});

test('conditions are the same where they mean the same, in whatever order; what is not given has its default', () => {
  expect(areSameConditions({ grainSize: 4, strainRate: 0.01 }, { strainRate: 0.01, grainSize: 4 })).toBe(
    true,
  );
  expect(areSameConditions({}, { serviceTemperature: 293.15 })).toBe(true);
  expect(areSameConditions({}, { grainSize: 4 })).toBe(false);
  expect(areSameConditions({ serviceTemperature: 873.15 }, { serviceTemperature: 873 })).toBe(false);
});
