import { expect, test } from 'vitest';
import { conditionsOf, quantityById } from '../../src/index.ts';

const of = (id: string) => conditionsOf(quantityById(id)).toSorted();

// Read off the formulas as published: the strengths take temperature and rate, fcc the grain size too.
test('the conditions that a formula computes with are named, each once', () => {
  expect(of('yieldStrengthFcc')).toEqual(['grainSize', 'serviceTemperature', 'strainRate']);
  expect(of('yieldStrengthBcc')).toEqual(['serviceTemperature', 'strainRate']);
  expect(of('mixingFreeEnergy')).toEqual(['annealTemperature']);
});

test('what holds whatever the conditions names none', () => {
  expect(of('density')).toEqual([]);
  expect(of('singlePhaseEstimate')).toEqual([]);
});
