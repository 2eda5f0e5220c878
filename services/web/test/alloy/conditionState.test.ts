import { expect, test } from 'vitest';
import { areSameConditions } from '../../src/alloy/conditionState.ts';

test('conditions are the same where they mean the same, in whatever order; what is not given has its default', () => {
  expect(areSameConditions({ grainSize: 4, strainRate: 0.01 }, { strainRate: 0.01, grainSize: 4 })).toBe(
    true,
  );
  expect(areSameConditions({}, { serviceTemperature: 293.15 })).toBe(true);
  expect(areSameConditions({}, { grainSize: 4 })).toBe(false);
  expect(areSameConditions({ serviceTemperature: 873.15 }, { serviceTemperature: 873 })).toBe(false);
});
