import type { Form } from '../form.ts';
import type { Node } from '../node.ts';
import { isUpper, type Operator } from './operator.ts';

/**
 * What decides whether the canonical evaluator would say that a value meets a limit.
 *
 * How to consume it: an atom holds where `value operator threshold`, and is certain where the
 * value is further than `guard` from the threshold; a guard of 0 is always certain. A point that
 * any atom leaves uncertain must be decided by the canonical evaluator. A value that is NaN is
 * certain, holds no atom, and is NaN for the canonical evaluator too.
 */
export type Test = { kind: 'always' | 'never' } | Atom | { kind: 'all' | 'any'; tests: readonly Test[] };

/**
 * A comparison; `size` is the greatest distance of a value to the threshold. Where there is a `unit`, the
 * guard counts in the value that this positive node has at the point.
 */
export interface Atom {
  kind: 'atom';
  value: Value;
  operator: Operator;
  threshold: number;
  guard: number;
  unit: Node | null;
  size: number;
  preview?: Preview;
}

/**
 * A cheaper node that mostly decides an atom: where it is less than `low` the atom's value surely is
 * below its threshold, where it is more than `high` above. Between them the value itself must be formed.
 */
export interface Preview {
  node: Node;
  low: number;
  high: number;
}

/** P of a form, or what a node computes. */
export type Value = { kind: 'form'; form: Form } | { kind: 'node'; node: Node };

export const always: Test = { kind: 'always' };
export const never: Test = { kind: 'never' };

/** All of some tests. */
export function all(...tests: Test[]): Test {
  if (tests.some(({ kind }) => kind === 'never')) return never;
  const open = tests.filter(({ kind }) => kind !== 'always');
  if (open.length < 2) return open[0] ?? always;
  return { kind: 'all', tests: open };
}

/** Any of some tests. */
export function any(...tests: Test[]): Test {
  if (tests.some(({ kind }) => kind === 'always')) return always;
  const open = tests.filter(({ kind }) => kind !== 'never');
  if (open.length < 2) return open[0] ?? never;
  return { kind: 'any', tests: open };
}

/**
 * A test of forms alone that holds wherever the test holds or is uncertain.
 */
export function loosened(test: Test): Test {
  if ('tests' in test) {
    const tests = test.tests.map(loosened);
    return test.kind === 'all' ? all(...tests) : any(...tests);
  }
  if (test.kind !== 'atom') return test;
  const { value, operator, threshold, guard, size } = test;
  if (value.kind !== 'form' || !Number.isFinite(guard)) return always;
  const wider = threshold + 1.01 * guard * (isUpper(operator) ? 1 : -1);
  return { kind: 'atom', value, operator, threshold: wider, guard: 0, unit: null, size };
}
