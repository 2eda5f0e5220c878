import { expect, test } from 'vitest';
import type { Test } from '../../../src/kernel/comparison/test.ts';
import { testsOf } from '../../../src/kernel/comparison/testsOf.ts';
import { linearForm } from '../../../src/kernel/form.ts';
import { nodeMaker } from '../../../src/kernel/nodeMaker.ts';
import { noSlack } from '../../../src/kernel/slack.ts';

const total = 20;
const nodes = nodeMaker(2, total, 2);
const tests = testsOf(nodes, (node) => node, total, 2);

/** A whole number between −20 and 20: `sign` times what one element has more than the other. */
const difference = (sign: 1 | -1) =>
  nodes.sum(sign, linearForm(Float64Array.of(sign, -sign), 1, total), noSlack, {
    ...{ low: -total, high: total, mayLack: false },
  });

const guardsOf = (of: Test): number[] =>
  'tests' in of ? of.tests.flatMap(guardsOf) : of.kind === 'atom' ? [of.guard] : [];

test('whether a quotient of two whole numbers is 0/0 is certain at every point', () => {
  const quotient = nodes.binary('divide', difference(1), difference(-1));
  const held = nodes.binary(
    'lesser',
    nodes.binary('greater', quotient, nodes.constant(-1)),
    nodes.constant(1),
  );
  const guards = guardsOf(tests.isFinite(held));
  expect(guards.length).toBeGreaterThan(0);
  expect(new Set(guards)).toEqual(new Set([0]));
});
