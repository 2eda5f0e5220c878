import { elements } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { miedemaParameters } from '../../src/index.ts';
import { facts, withValues } from '../fixtures/alloys.ts';

// de Boer et al. 1988, as carried by matminer: φ* 4.20 V, n_ws 2.7, V 10.0 cm3.
test('aluminium', () => {
  const found = miedemaParameters('Al', facts)!;
  expect(found.potential).toBe(4.2);
  expect(found.electronDensity ** 3).toBeCloseTo(2.7, 2);
  expect(found.surface ** 1.5).toBeCloseTo(10, 2);
  expect(found.isTransition).toBe(false);
});

test('every element of the data has its parameters', () => {
  expect(elements.filter(({ symbol }) => miedemaParameters(symbol, facts) === null)).toEqual([]);
});

test('one value that lacks is all that lacks', () => {
  for (const column of Object.keys(facts.columns).filter((id) => id.startsWith('miedema'))) {
    expect(miedemaParameters('Fe', withValues(column, { Fe: null })), column).toBeNull();
  }
});

test('an element that the facts do not hold has none', () => {
  expect(miedemaParameters('Xx', facts)).toBeNull();
});
