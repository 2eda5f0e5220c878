import { LARGEST_EXPONENT } from '../approximate.ts';
import { bare, fixedValue, type Node } from '../node.ts';
import { sizeOf } from '../slack.ts';
import { nodeAtom } from './atom.ts';
import type { Comparer } from './comparer.ts';
import { choiceOf } from './condition.ts';
import { mayBeInfinite, mayBeNaN } from './mayBeNaN.ts';
import { all, always, any, type Test } from './test.ts';

/** Far above the least numbers that a double holds, 1 over it far below the greatest. */
const SMALLEST = 1e-300;

type Binary = Extract<Node['operation'], { left: Node }>;

/** Whether a node is a number of at least 0. */
export function notNegative(comparer: Comparer, of: Node): Test {
  return of.low >= 0 ? isNumber(comparer, of) : comparer.compare(of, '>=', 0, 0);
}

/** Whether a node is not NaN. */
export function isNumber(comparer: Comparer, given: Node): Test {
  const node = bare(given);
  const { operation } = node;
  if (!mayBeNaN(node)) return always;
  const isNumberToo = (of: Node): Test => isNumber(comparer, of);
  if (operation.kind === 'choose') return choiceOf(comparer, operation, isNumberToo);
  if (operation.kind === 'divide') {
    const both = [operation.left, bare(operation.right)];
    const oneIsFinite = both.every(mayBeInfinite)
      ? any(...both.map((one) => isFiniteNode(comparer, one)))
      : always;
    return all(...both.map(isNumberToo), any(...both.map((one) => isApart(comparer, one))), oneIsFinite);
  }
  if (operation.kind === 'lesser' || operation.kind === 'greater') {
    return all(isNumberToo(operation.left), isNumberToo(operation.right));
  }
  if ('of' in operation && operation.kind !== 'away') {
    const signed =
      operation.kind === 'power'
        ? !Number.isInteger(operation.exponent)
        : operation.kind === 'squareRoot' || operation.kind === 'logarithm';
    return signed ? notNegative(comparer, operation.of) : isNumberToo(operation.of);
  }
  if ('left' in operation) {
    const { kind, left, right } = operation;
    const numbers = all(isNumberToo(left), isNumberToo(right));
    if (kind === 'multiply') {
      return all(numbers, isDefined(comparer, left, right), isDefined(comparer, right, left));
    }
    // ∞ − ∞
    if (!mayBeInfinite(left) || !mayBeInfinite(right)) return numbers;
  }
  return nodeAtom(node, { operator: '>=', threshold: Number.NEGATIVE_INFINITY, width: 0 });
}

/** Whether one side of a product is not infinite where the other is 0; no more is asked of it. */
function isDefined(comparer: Comparer, one: Node, other: Node): Test {
  if (!mayBeInfinite(one) || other.least > 0) return always;
  return any(isFiniteNode(comparer, one), isApart(comparer, other));
}

/** Whether a node is not 0, nor within a width of it. */
function isApart({ compare }: Comparer, node: Node, width = 0): Test {
  return any(compare(node, '>', 0, width), compare(node, '<', 0, width));
}

/**
 * Whether a node is finite. Sums and products of finite numbers are taken to be finite where their ends say so,
 * and where a side may be infinite: what else it may be is not far from 1.
 */
export function isFiniteNode(comparer: Comparer, given: Node): Test {
  const node = bare(given);
  if (!node.mayLack) return always;
  return finiteByOperands(comparer, node) ?? isWithinDoubles(comparer, node);
}

/** Null where the operands do not tell. */
function finiteByOperands(comparer: Comparer, { operation }: Node): Test | null {
  const isFiniteToo = (of: Node): Test => isFiniteNode(comparer, of);
  switch (operation.kind) {
    case 'choose':
      return choiceOf(comparer, operation, isFiniteToo);
    case 'divide': {
      const below = bare(operation.right);
      // A polynomial is 0 or not next to nothing; an exponential may be so small that the quotient is infinite.
      const near = below.form ? 0 : SMALLEST * Math.min(sizeOf(operation.left), 1 / Math.sqrt(SMALLEST));
      // Over an infinite divisor it is 0.
      return all(isFiniteToo(operation.left), isNumber(comparer, below), isApart(comparer, below, near));
    }
    case 'squareRoot':
      return all(isFiniteToo(operation.of), notNegative(comparer, operation.of));
    case 'logarithm':
      return all(isFiniteToo(operation.of), comparer.compare(operation.of, '>', 0, 0));
    case 'negate':
    case 'absolute':
      return isFiniteToo(operation.of);
    case 'exponential':
      return operation.of.high <= LARGEST_EXPONENT ? isNumber(comparer, operation.of) : null;
    case 'add':
    case 'subtract':
    case 'multiply': {
      const [left, right] = [sizeOf(operation.left), sizeOf(operation.right)];
      const isOpen = Math.max(left, right) === Number.POSITIVE_INFINITY;
      const most = operation.kind === 'multiply' ? left * right : left + right;
      if (!isOpen && !(most < 1 / SMALLEST)) return null;
      return all(isFiniteToo(operation.left), isFiniteToo(operation.right));
    }
    case 'lesser':
    case 'greater':
      return finiteExtreme(comparer, operation);
    default:
      return null;
  }
}

function finiteExtreme(comparer: Comparer, { kind, left, right }: Binary): Test | null {
  const sides = [left, right];
  // A finite side holds an infinite one, where that lies on the other end: Ω of ΔH = 0.
  const held = sides.every(({ low, high }) =>
    kind === 'lesser' ? low > Number.NEGATIVE_INFINITY : high < Number.POSITIVE_INFINITY,
  );
  if (held && sides.some(({ mayLack }) => !mayLack)) {
    return all(...sides.map((side) => isNumber(comparer, side)));
  }
  const cut = fixedValue(left) ?? fixedValue(right);
  if (cut === null) return null;
  const of = fixedValue(left) === null ? left : right;
  const beyond = comparer.compare(of, kind === 'lesser' ? '>=' : '<=', cut, 0);
  return all(isNumber(comparer, of), any(isFiniteNode(comparer, of), beyond));
}

function isWithinDoubles({ compare }: Comparer, node: Node): Test {
  return all(compare(node, '>=', -Number.MAX_VALUE, 0), compare(node, '<=', Number.MAX_VALUE, 0));
}
