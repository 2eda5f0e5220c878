import { constantForm, type Form, productOfForms, roundingOf, scaledForm } from './form.ts';
import { bare, fixedValue, type Node } from './node.ts';
import { absoluteOf, sizeOf } from './slack.ts';

/**
 * What a point must meet, at least, for its score to reach a cut-off: above ≤ bound · below, with
 * `below` positive. The bound follows from the cut-off, which is known only while the kernel runs:
 * unlike a limit's, such a test is data. Infinity: every point meets it.
 */
export interface Reach {
  above: Form;
  below: Form;
  bound(score: number): number;
  /** Exponents that the compared number is raised to on its way to the score: the larger, the more of the points it rules out. */
  weight: number;
  /** How far the canonical above − bound · below may lie from what the kernel makes of it. */
  slack(bound: number): number;
}

type Transform = (score: number) => number;
type Side = 'at least' | 'at most';

/** A second condition costs more at every point than the scores that it spares. */
const mostReaches = 1;

/**
 * Necessary conditions for the value of a node to be at least, or at most, a score, as far as they
 * are comparisons of two forms; none where there is no such condition.
 */
export function reachesOf(
  node: Node,
  prefer: 'high' | 'low',
  total: number,
  elements: number,
): readonly Reach[] {
  const size = (form: Form) => form.linear.length;

  /** @param to the number that the node must be at least or at most; an infinite one asks for nothing */
  function reaches(given: Node, side: Side, to: Transform, weight: number): Reach[] {
    const of = bare(given);
    const { operation } = of;
    const open = side === 'at least' ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
    if (of.form) return [against(of, null, side, to, weight)];
    const factor = constantPart(of);
    if (factor) return factor(side, to, weight);
    switch (operation.kind) {
      case 'negate':
        return reaches(operation.of, otherSide(side), (score) => -to(score), weight);
      case 'absolute':
        if (side === 'at least') return [];
        return [
          ...reaches(operation.of, 'at most', to, weight),
          ...reaches(operation.of, 'at least', (score) => -to(score), weight),
        ];
      case 'choose':
        return operation.otherwise === null ? reaches(operation.then, side, to, weight) : [];
      case 'lesser':
      case 'greater': {
        const both = (operation.kind === 'lesser') === (side === 'at least');
        if (both) return [operation.left, operation.right].flatMap((one) => reaches(one, side, to, weight));
        const [left, right] = [fixedValue(operation.left), fixedValue(operation.right)];
        const fixed = left ?? right;
        if (fixed === null) return [];
        const met: (value: number) => boolean = (value) =>
          side === 'at least' ? fixed >= value : fixed <= value;
        const eased: Transform = (score) => (met(to(score)) ? open : to(score));
        return reaches(left === null ? operation.left : operation.right, side, eased, weight);
      }
      case 'power': {
        const { exponent } = operation;
        if (operation.of.low < 0 || !(exponent > 0)) return [];
        return reaches(operation.of, side, (score) => rooted(to(score), exponent, side), weight * exponent);
      }
      case 'squareRoot':
        return reaches(operation.of, side, (score) => squared(to(score), side), weight / 2);
      case 'multiply': {
        const { left, right } = operation;
        if (side === 'at most' || left.low < 0 || right.low < 0) return [];
        const share = (one: Node, other: Node) =>
          Number.isFinite(other.high) && other.high > 0
            ? reaches(
                one,
                side,
                (score) => (to(score) > 0 ? to(score) / (other.high * 1.0000001) : open),
                weight,
              )
            : [];
        return [...share(left, right), ...share(right, left)];
      }
      case 'divide': {
        const below = bare(operation.right);
        if (!(below.low > 0) || below.form === null) return [];
        const above = bare(operation.left);
        if (above.form) return [against(above, below, side, to, weight)];
        return rootReach(above, below, side, to, weight);
      }
      default:
        return [];
    }
  }

  /** Arithmetic with one constant. */
  function constantPart({
    operation,
  }: Node): ((side: Side, to: Transform, weight: number) => Reach[]) | null {
    if (!('left' in operation)) return null;
    const { kind, left, right } = operation;
    const [first, second] = [fixedValue(left), fixedValue(right)];
    const other = kind === 'add' || kind === 'subtract' ? (first ?? second) : null;
    if (other !== null) {
      const of = first === null ? left : right;
      if (kind === 'add') {
        return (side, to, weight) => reaches(of, side, (score) => moved(to(score), -other, side), weight);
      }
      if (first === null) {
        return (side, to, weight) => reaches(of, side, (score) => moved(to(score), other, side), weight);
      }
      return (side, to, weight) =>
        reaches(of, otherSide(side), (score) => moved(-to(score), other, otherSide(side)), weight);
    }
    const factor = kind === 'multiply' ? (first ?? second) : kind === 'divide' && second ? 1 / second : null;
    if (factor === null || factor === 0) return null;
    const of = first === null ? left : right;
    return (side, to, weight) =>
      reaches(of, factor > 0 ? side : otherSide(side), (score) => to(score) / factor, weight);
  }

  /** k √v / b by the squares of both sides. */
  function rootReach(above: Node, below: Node, side: Side, to: Transform, weight: number): Reach[] {
    const { operation } = above;
    if (operation.kind !== 'squareRoot' || below.form === null) return [];
    const inner = bare(operation.of);
    const square = productOfForms(below.form.form, below.form.form, total);
    if (inner.low < 0 || inner.form === null || square === null) return [];
    const slack = {
      absolute: 2.1 * sizeOf(below) * absoluteOf({ ...below, slack: below.form.slack }),
      relative: 0,
    };
    const squaredBelow: Node = {
      ...below,
      low: below.low ** 2,
      high: below.high ** 2,
      form: { form: square, slack },
    };
    return [against(inner, squaredBelow, side, (score) => squared(to(score), side), weight / 2)];
  }

  function against(above: Node, below: Node | null, side: Side, to: Transform, weight: number): Reach {
    const sign = side === 'at most' ? 1 : -1;
    const divisor = below?.form?.form ?? constantForm(1, size(above.form!.form));
    const roundings = (form: Form) => form.scale * roundingOf({ ...form, exact: false }, total, elements);
    const canonical = (node: Node) => absoluteOf({ ...node, slack: node.form!.slack });
    const fixed = 2 * (canonical(above) + roundings(above.form!.form));
    const byBound = 2 * ((below ? canonical(below) : 0) + roundings(divisor));
    return {
      above: sign === 1 ? above.form!.form : scaledForm(above.form!.form, -1),
      below: divisor,
      weight,
      bound: (score) => sign * to(score),
      slack: (bound) => fixed + Math.abs(bound) * (byBound + 2 ** -45 * (below ? sizeOf(below) : 1)),
    };
  }

  const found = reaches(node, prefer === 'high' ? 'at least' : 'at most', (score) => score, 1);
  return found.sort((one, other) => other.weight - one.weight).slice(0, mostReaches);
}

/** The sum, eased by far more than it and what led to it was rounded: the two may cancel. */
function moved(value: number, by: number, side: Side): number {
  const margin = 2 ** -46 * (Math.abs(value) + Math.abs(by));
  return side === 'at least' ? value + by - margin : value + by + margin;
}

const otherSide = (side: Side): Side => (side === 'at least' ? 'at most' : 'at least');

/** The square of what a root must reach; a root is at least 0 anyway, and at most a negative number never. */
function squared(value: number, side: Side): number {
  if (value > 0) return value * value;
  return side === 'at least' ? Number.NEGATIVE_INFINITY : 0;
}

function rooted(value: number, exponent: number, side: Side): number {
  const margin = side === 'at least' ? 1 - 2 ** -40 : 1 + 2 ** -40;
  if (value > 0) return value ** (1 / exponent) * margin;
  return side === 'at least' ? Number.NEGATIVE_INFINITY : 0;
}
