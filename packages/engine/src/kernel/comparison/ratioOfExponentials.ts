import { fixedValue, type Node, type Nodes } from '../node.ts';
import { absoluteOf, ROUNDED, relativeOf } from '../slack.ts';
import { distance } from './atom.ts';
import type { Comparer, Relation } from './comparer.ts';
import type { Atom, Preview, Test } from './test.ts';

/** A guard of at most this share of the value at the point itself leaves hardly a point uncertain. */
const COARSE = 1e-5;

/**
 * a/b against g, both positive and made of exponentials, which may be small at one point and huge at
 * another: a − g b against 0, with a guard in parts of g b, for which rough exponentials are good enough.
 */
export function ratioOfExponentials(
  { nodes, roughen }: Comparer,
  above: Node,
  below: Node,
  { operator, threshold, width }: Relation,
): Test | null {
  const [upper, lower] = [roughen(above), roughen(below)];
  if (upper === above && lower === below) return null;
  if (above.mayLack || below.mayLack || above.low < 0 || below.low < 0) return null;
  if (!(threshold - width > 0)) return null;
  const relative = relativeOf(upper) + relativeOf(lower) + width / (threshold - width) + 4 * ROUNDED;
  if (!(relative <= COARSE)) return null;
  const unit = nodes.binary('multiply', nodes.constant(threshold), lower);
  const node = nodes.binary('subtract', upper, unit);
  const atom: Atom = {
    kind: 'atom',
    value: { kind: 'node', node },
    operator,
    threshold: 0,
    guard: 1.1 * relative,
    unit,
    size: distance(node, 0),
  };
  const preview = previewOf(nodes, upper, lower, threshold);
  return preview === null ? atom : { ...atom, preview };
}

/** A sum of n powers of two lies between its greatest term and n times that: a difference of exponents tells most. */
function previewOf(nodes: Nodes, above: Node, below: Node, threshold: number): Preview | null {
  const [upper, lower] = [exponentsOf(nodes, above), exponentsOf(nodes, below)];
  if (upper === null || lower === null) return null;
  const greatest = (exponents: readonly Node[]): Node =>
    exponents.reduce((one, other) => nodes.binary('greater', one, other));
  const node = nodes.binary('subtract', greatest(upper), greatest(lower));
  const margin = 1e-6 + 2 * absoluteOf(node);
  if (!(margin < 0.01)) return null;
  const even = Math.log2(threshold);
  const [low, high] = [even - Math.log2(upper.length) - margin, even + Math.log2(lower.length) + margin];
  return { node, low, high };
}

/** What 2 is raised to in each term of a sum of such powers, a constant being one; null for anything else. */
function exponentsOf(nodes: Nodes, node: Node): Node[] | null {
  const { operation } = node;
  const value = fixedValue(node);
  if (value !== null) return value > 0 ? [nodes.constant(Math.log2(value))] : null;
  if (operation.kind === 'powerOfTwo') return [operation.of];
  if (operation.kind !== 'add') return null;
  const [left, right] = [exponentsOf(nodes, operation.left), exponentsOf(nodes, operation.right)];
  return left && right && [...left, ...right];
}
