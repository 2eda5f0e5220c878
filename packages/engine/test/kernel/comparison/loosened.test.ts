import { expect, test } from 'vitest';
import { type Atom, loosened, type Test } from '../../../src/kernel/comparison/test.ts';
import { linearForm } from '../../../src/kernel/form.ts';
import type { Node } from '../../../src/kernel/node.ts';

const form = linearForm(Float64Array.of(1, 2), 1, 20);
const atom = (operator: Atom['operator'], guard: number): Atom => ({
  ...{ kind: 'atom', value: { kind: 'form', form }, operator, threshold: 10, guard, unit: null, size: 40 },
});
const computed: Atom = { ...atom('<=', 0.5), value: { kind: 'node', node: {} as Node } };
const always: Test = { kind: 'always' };

test('a threshold moves out by the guard, so that what is uncertain is not ruled out', () => {
  for (const operator of ['<', '<='] as const) {
    const loose = loosened(atom(operator, 0.5)) as Atom;
    expect(loose.threshold).toBeGreaterThanOrEqual(10.5);
    expect(loose.guard).toBe(0);
  }
  for (const operator of ['>', '>='] as const) {
    expect((loosened(atom(operator, 0.5)) as Atom).threshold).toBeLessThanOrEqual(9.5);
  }
  expect(loosened(atom('<=', 0))).toEqual(atom('<=', 0));
});

test('what is no form, or of no known error, rules nothing out', () => {
  expect(loosened(computed)).toEqual(always);
  expect(loosened(atom('<', Number.POSITIVE_INFINITY))).toEqual(always);
  expect(loosened({ kind: 'any', tests: [atom('<', 0), computed] })).toEqual(always);
  expect(loosened({ kind: 'all', tests: [atom('<', 0), computed] })).toEqual(atom('<', 0));
  expect(loosened({ kind: 'never' })).toEqual({ kind: 'never' });
});
