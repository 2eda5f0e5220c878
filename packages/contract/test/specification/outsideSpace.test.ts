import { describe, expect, test } from 'vitest';
import { outsideSpace } from '../../src/index.ts';
import { check, request } from '../fixtures/known.ts';

const { specification: space } = check(
  request({
    elements: { pool: ['Al', 'Cr', 'Cu', 'Fe', 'Mn', 'Co'], require: ['Cr', 'Ni'], forbid: ['Co'] },
    components: { min: 4, max: 5 },
    fractions: { step: 5, min: 5, max: 35, each: { Al: { max: 15 }, Cr: { min: 15 }, Ti: { max: 5 } } },
  }),
);

test.each([
  [{ Cr: 15, Fe: 35, Mn: 15, Ni: 35 }],
  [{ Al: 15, Cr: 20, Fe: 20, Mn: 10, Ni: 35 }],
  // between two steps, and a third as text has it
  [{ Al: 7.5, Cr: 22.5, Fe: 35, Ni: 35 }],
  [{ Cr: 33.333333333, Fe: 33.333333333, Mn: 16.666666667, Ni: 16.666666667, Co: 0 }],
])('%j lies in the space', (composition) => {
  expect(outsideSpace(composition, space)).toEqual([]);
});

test.each([
  [{ Co: 10, Cr: 20, Fe: 35, Ni: 35 }, ['Co is forbidden']],
  // its own bounds count for nothing: it is not in the pool
  [{ Cr: 20, Fe: 30, Ni: 30, Ti: 20 }, ['Ti is not in the pool']],
  [{ Al: 15, Cu: 15, Fe: 35, Mn: 35 }, ['Cr is required', 'Ni is required']],
  [{ Cr: 30, Fe: 35, Ni: 35 }, ['3 elements, at least 4']],
  [{ Al: 10, Cr: 20, Cu: 10, Fe: 20, Mn: 20, Ni: 20 }, ['6 elements, at most 5']],
  [
    { Cr: 20, Cu: 2.5, Fe: 37.5, Ni: 40 },
    ['Cu 2.5 at.%, at least 5', 'Fe 37.5 at.%, at most 35', 'Ni 40 at.%, at most 35'],
  ],
  [{ Al: 20, Cr: 10, Fe: 35, Ni: 35 }, ['Al 20 at.%, at most 15', 'Cr 10 at.%, at least 15']],
  [{ Cr: 20, Fe: 35.001, Mn: 9.999, Ni: 35 }, ['Fe 35.001 at.%, at most 35']],
])('%j does not, and each reason is told', (composition, reasons) => {
  expect(outsideSpace(composition, space)).toEqual(reasons);
});

describe('equal shares', () => {
  const equal = check(request({ components: 4, fractions: 'equimolar' })).specification;

  test('an alloy of equal shares lies in the space', () => {
    expect(outsideSpace({ Al: 25, Co: 25, Cr: 25, Ni: 25 }, equal)).toEqual([]);
  });
  test('any other does not', () => {
    expect(outsideSpace({ Al: 12.5, Co: 37.5, Cr: 25, Ni: 25 }, equal)).toEqual(['the shares are not equal']);
  });
});
