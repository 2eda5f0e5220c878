import { EPSILON, type Form, greatestOf, roundingOf } from '../form.ts';
import type { Node } from '../node.ts';
import { ROUNDED } from '../slack.ts';
import type { Comparer, Relation } from './comparer.ts';
import type { Operator } from './operator.ts';
import type { Atom, Value } from './test.ts';

/**
 * P of a form against a threshold.
 *
 * @param slack how far the canonical value may lie from P, and the threshold from what it stands for
 * @param greatest distance of a value to the threshold, where the node that the form stands for says so
 */
export function formAtom(
  { total, elements }: Comparer,
  form: Form,
  operator: Operator,
  threshold: number,
  slack: number,
  greatest: number,
): Atom {
  const value: Value = { kind: 'form', form };
  if (form.exact) {
    const guard = slack === 0 ? 0 : slack + 4 * EPSILON * Math.abs(threshold);
    const certain = guard === 0 || Math.ceil(threshold - guard) > Math.floor(threshold + guard);
    return {
      kind: 'atom',
      value,
      operator,
      threshold,
      guard: certain ? 0 : guard,
      unit: null,
      size: greatest,
    };
  }
  const size = greatestOf(form, total) + Math.abs(threshold);
  const guard = slack + roundingOf(form, total, elements) + ROUNDED * size;
  return {
    kind: 'atom',
    value,
    operator,
    threshold,
    guard,
    unit: null,
    size: Math.min(size, greatest) + guard,
  };
}

/** What a node computes against a threshold. */
export function nodeAtom(node: Node, { operator, threshold, width }: Relation): Atom {
  const { absolute, relative } = node.slack;
  const guard = absolute + (relative === 0 ? 0 : 1.1 * relative * (Math.abs(threshold) + width)) + width;
  const rounding = ROUNDED * Math.abs(threshold) + Number.MIN_VALUE;
  const value: Value = { kind: 'node', node };
  const size = distance(node, threshold) + guard;
  return { kind: 'atom', value, operator, threshold, guard: guard + rounding, unit: null, size };
}

/** The greatest distance of a node to a threshold, with room for what is rounded. */
export function distance({ low, high }: Node, threshold: number): number {
  return 1.001 * Math.max(Math.abs(low - threshold), Math.abs(high - threshold));
}
