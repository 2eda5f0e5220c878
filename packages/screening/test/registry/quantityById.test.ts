import { ProblemError } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { quantityById, sensitivities, valueFor } from '../../src/index.ts';
import { factsWith } from '../fixtures/elements.ts';

function faultsOf(action: () => unknown) {
  try {
    action();
  } catch (error) {
    if (error instanceof ProblemError) return error.faults;
    throw error;
  }
  return [];
}

test('a quantity is found by its id', () => {
  expect(quantityById('density').name).toBe('Density');
});

test('an unknown id is refused with the one that was probably meant, and with its place', () => {
  const [fault] = faultsOf(() => quantityById('densty', '/limits/0/quantity'));
  expect(fault).toMatchObject({ code: 'quantity/unknown', pointer: '/limits/0/quantity' });
  expect(fault!.detail).toContain('density');
});

test('an unknown id that resembles none is refused without a guess', () => {
  const [fault] = faultsOf(() => quantityById('zzzzzzzzzzzz'));
  expect(fault!.detail).toContain('zzzzzzzzzzzz');
  expect(fault!.detail).not.toContain('mean');
});

test('whatever takes an id refuses an unknown one alike', () => {
  const code = 'quantity/unknown';
  expect(faultsOf(() => valueFor('hardness', 'Ni'))).toMatchObject([{ code }]);
  expect(faultsOf(() => sensitivities('hardness', { Ni: 100 }, factsWith()))).toMatchObject([{ code }]);
});
