import { expect, test } from 'vitest';
import { effectivePool } from '../../src/index.ts';
import { check, faultsIn, onlyFault, request } from '../fixtures/known.ts';

const withElements = (elements: unknown) => request({ elements, components: 2 });

test('require adds to the pool, forbid removes from it', () => {
  expect(effectivePool({ pool: ['Ni', 'Al'], require: ['Ti'], forbid: ['Al', 'V'] })).toEqual(['Ni', 'Ti']);
});

test('a forbidden element outside the pool is fine, so is a required one', () => {
  expect(faultsIn(withElements({ pool: ['Ni', 'Al'], forbid: ['Co'], require: ['Cr'] }))).toEqual([]);
});

test('the order of the pool stays as written', () => {
  expect(check(withElements({ pool: ['Ni', 'Al'] })).specification.elements.pool).toEqual(['Ni', 'Al']);
});

test('a duplicate is a fault in each list, at its second place', () => {
  expect(
    faultsIn(withElements({ pool: ['Ni', 'Al', 'Ni'], require: ['Cr', 'Cr'], forbid: ['V', 'V'] })),
  ).toEqual([
    'specification/duplicate-element /elements/pool/2',
    'specification/duplicate-element /elements/require/1',
    'specification/duplicate-element /elements/forbid/1',
  ]);
});

test('an unknown symbol is a fault, also a forbidden one', () => {
  const sent = withElements({ pool: ['Ni', 'Al', 'Xx'], forbid: ['Qq'] });
  expect(faultsIn(sent)).toEqual([
    'specification/unknown-element /elements/pool/2',
    'specification/unknown-element /elements/forbid/0',
  ]);
});

test('a symbol in the wrong case is named', () => {
  expect(onlyFault(withElements({ pool: ['Ni', 'AL'] })).detail).toContain('did you mean "Al"?');
});

test('required and forbidden at once is a fault', () => {
  const sent = withElements({ pool: ['Ni', 'Al'], require: ['Ni'], forbid: ['Al', 'Ni'] });
  expect(faultsIn(sent)).toEqual(['specification/required-and-forbidden /elements/forbid/1']);
});

test('a list as long as a novel is refused by its length', () => {
  const pool = Array.from({ length: 5000 }, () => 'Ni');
  expect(faultsIn(withElements({ pool }))).toContain('request/length /elements/pool');
});
