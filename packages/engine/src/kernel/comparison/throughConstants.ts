import { fixedValue, type Node } from '../node.ts';
import { ROUNDED } from '../slack.ts';
import type { Comparer, Relation } from './comparer.ts';
import { mirrored } from './operator.ts';
import type { Test } from './test.ts';

/** Rules for arithmetic with one constant, which goes to the other side, and for the sign. */
export function throughConstants(
  { compare }: Comparer,
  { operation }: Node,
  { operator, threshold, width }: Relation,
): Test | null {
  if (operation.kind === 'negate') return compare(operation.of, mirrored[operator], -threshold, width);
  if (!('left' in operation)) return null;
  const [left, right] = [fixedValue(operation.left), fixedValue(operation.right)];
  const rounded = width + ROUNDED * (Math.abs(threshold) + width);
  if (operation.kind === 'add' || operation.kind === 'subtract') {
    const value = left ?? right;
    if (value === null) return null;
    const wider = rounded + ROUNDED * Math.abs(value);
    if (right !== null) {
      const moved = operation.kind === 'add' ? threshold - right : threshold + right;
      return compare(operation.left, operator, moved, wider);
    }
    if (operation.kind === 'add') return compare(operation.right, operator, threshold - value, wider);
    return compare(operation.right, mirrored[operator], value - threshold, wider);
  }
  const factor =
    operation.kind === 'multiply' ? (left ?? right) : operation.kind === 'divide' && right ? 1 / right : null;
  if (factor === null || factor === 0 || !Number.isFinite(factor)) return null;
  const of = left === null ? operation.left : operation.right;
  const moved = operation.kind === 'divide' ? threshold * right! : threshold / factor;
  const side = factor > 0 ? operator : mirrored[operator];
  return compare(of, side, moved, rounded / Math.abs(factor));
}
