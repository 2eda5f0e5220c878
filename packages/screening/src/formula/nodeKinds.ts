import type { BinaryKind, UnaryKind } from './expression.ts';

const binaryKinds: ReadonlySet<string> = new Set<BinaryKind>([
  'add',
  'subtract',
  'multiply',
  'divide',
  'lesser',
  'greater',
]);
const unaryKinds: ReadonlySet<string> = new Set<UnaryKind>([
  'negate',
  'squareRoot',
  'absolute',
  'exponential',
  'logarithm',
]);

/** Whether an expression or a step is an operator with a left and a right side. */
export function isBinary<Node extends { kind: string }>(
  node: Node,
): node is Extract<Node, { kind: BinaryKind }> {
  return binaryKinds.has(node.kind);
}

/** Whether an expression or a step is an operator on one value without a parameter. */
export function isUnary<Node extends { kind: string }>(
  node: Node,
): node is Extract<Node, { kind: UnaryKind }> {
  return unaryKinds.has(node.kind);
}
