import { bare, fixedValue, type Node } from '../node.ts';
import { ROUNDED, sizeOf } from '../slack.ts';
import type { Comparer, Relation } from './comparer.ts';
import type { Test } from './test.ts';

/** k √v against g b, both not negative: k² v against g² b². */
export function rootAgainst(
  { nodes, compare }: Comparer,
  above: Node,
  below: Node,
  { operator, threshold, width }: Relation,
): Test | null {
  const root = rootOf(above);
  if (root === null || threshold < 0 || root.of.low < 0) return null;
  if (root.of.form === null || below.form === null || below.form.form.degree > 1) return null;
  const squared = nodes.binary('multiply', below, below);
  const moved = nodes.binary(
    'subtract',
    nodes.binary('multiply', nodes.constant(root.factor ** 2), root.of),
    nodes.binary('multiply', nodes.constant(threshold ** 2), squared),
  );
  const size = sizeOf(below) ** 2;
  const wider = size * (2 * threshold * width + width * width + 2 * ROUNDED * threshold ** 2);
  return compare(moved, operator, 0, wider + 2 * ROUNDED * root.factor ** 2 * sizeOf(root.of));
}

/** k √v as k ≥ 0 and v, where a node is that. */
function rootOf(node: Node): { factor: number; of: Node } | null {
  const { operation } = node;
  if (operation.kind === 'squareRoot') return { factor: 1, of: bare(operation.of) };
  if (operation.kind !== 'multiply') return null;
  const [left, right] = [fixedValue(operation.left), fixedValue(operation.right)];
  const factor = left ?? right;
  if (factor === null || factor < 0) return null;
  const inner = rootOf(left === null ? operation.left : operation.right);
  return inner && { factor: factor * inner.factor, of: inner.of };
}
