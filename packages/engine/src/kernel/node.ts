import type { Form } from './form.ts';
import type { Known, Slack } from './slack.ts';

/** What a node computes, from other nodes. */
export type Operation =
  | { kind: 'constant'; value: number }
  /** A step of the program that is the same at all points of a system; computed canonically. */
  | { kind: 'system'; step: number }
  | { kind: 'entropy' }
  /** factor · P of a form that is built up along the grid. */
  | { kind: 'form'; base: Form; factor: number }
  | { kind: BinaryKind; left: Node; right: Node }
  /** powerOfTwo is a rough one. */
  | { kind: UnaryKind; of: Node }
  | { kind: 'power'; of: Node; exponent: number }
  | { kind: 'choose'; when: Condition; then: Node; otherwise: Node | null }
  /** The value of a node; points where the size of `guard` is `least` or less are left to the canonical evaluator. */
  | { kind: 'away'; of: Node; guard: Node; least: number };

export type UnaryKind = 'negate' | 'squareRoot' | 'absolute' | 'exponential' | 'powerOfTwo' | 'logarithm';
export type BinaryKind = 'add' | 'subtract' | 'multiply' | 'divide' | 'lesser' | 'greater';

export interface Condition {
  left: Node;
  operator: '<' | '<=';
  right: Node;
}

/**
 * A number that the kernel may compute at each point, in place of the canonical evaluator's.
 *
 * - low, high: ends of the canonical value on the grid, where it is finite
 * - least: the least size that it has
 * - slack: how far the kernel's value may lie from the canonical one
 * - mayLack: whether it may be NaN or infinite; outside the guards the kernel's value is then too
 * - form: the polynomial that it is in real arithmetic, with how far the canonical value may lie from it
 */
export interface Node extends Known {
  id: number;
  operation: Operation;
  mayLack: boolean;
  form: { form: Form; slack: Slack } | null;
}

/** Ends of a canonical value. */
export interface Ends {
  low: number;
  high: number;
  mayLack: boolean;
}

/** Makes nodes: equal ones once. */
export interface Nodes {
  constant(value: number): Node;
  system(step: number, ends: Ends): Node;
  entropy(ends: Ends): Node;
  /** A sum of the program: scale · P, where the canonical value lies within a slack of it. */
  sum(step: number, form: Form, slack: Slack, ends: Ends): Node;
  /** A form whose value is known up to a slack, ends and all. */
  form(form: Form, slack: Slack, ends: Ends): Node;
  binary(kind: BinaryKind, left: Node, right: Node, ends?: Ends): Node;
  unary(kind: UnaryKind, of: Node, ends?: Ends): Node;
  power(of: Node, exponent: number, ends?: Ends): Node;
  choose(when: Condition, then: Node, otherwise: Node | null, ends: Ends): Node;
}

/** The node itself, without the care that is taken where it is divided by. */
export function bare(node: Node): Node {
  return node.operation.kind === 'away' ? bare(node.operation.of) : node;
}

/** The value of a constant node, null for others. */
export function fixedValue({ operation }: Node): number | null {
  return operation.kind === 'constant' ? operation.value : null;
}

/** The factor that a node has, which another can be divided by to be rid of it; 1 where there is none. */
export function factorOf({ operation }: Node): number {
  if (operation.kind === 'form') return Math.abs(operation.factor);
  if (operation.kind !== 'multiply') return 1;
  return Math.abs(fixedValue(operation.left) ?? factorOf(operation.left));
}
