import { bare, type Ends, fixedValue, type Node, type Nodes } from './node.ts';

/** A power of a score without roots in it, which is as good to compare by as the score. */
export interface Unrooted {
  node: Node;
  /** What the node is where the score is this, at least 0. */
  of(score: number): number;
  /** Relative error of exponents that are not whole in binary, over all scores above 10^-300. */
  slack: number;
}

/** Powers up to here are a few multiplications. */
const MOST = 4;
/** Exponents of the score, as shares of weights, are off by some roundings. */
const WHOLE = 1e-12;

/**
 * A product of powers, as desirabilities make it, (a² · b)^(1/3) say, raised until every exponent is
 * a small whole number: a⁴ · b² or so, which takes no logarithm. Null where a score is no such product.
 */
export function unrooted(nodes: Nodes, score: Node): Unrooted | null {
  const factors = new Map<Node, number>();
  if (!gather(score, 1, factors) || factors.size === 0) return null;
  const exponents = [...factors.values()];
  if (exponents.every((one) => isSmallWhole(one))) return null;
  const least = Math.min(...exponents);
  for (let first = 1; first <= MOST; first += 1) {
    const times = first / least;
    if (!exponents.every((one) => isSmallWhole(one * times))) continue;
    const powers = [...factors].map(([of, exponent]) => wholePower(nodes, of, Math.round(exponent * times)));
    const node = powers.reduce((product, one) => nodes.binary('multiply', product, one));
    return { node, of: (value) => value ** times, slack: times * exponents.length * 2 ** -40 };
  }
  return null;
}

const isSmallWhole = (value: number) =>
  Math.abs(value - Math.round(value)) <= WHOLE && value > 0.5 && value < MOST + 0.5;

/** Adds the factors of a product, none of which is ever below 0, with their exponents; false where there are others. */
function gather(given: Node, exponent: number, into: Map<Node, number>): boolean {
  const of = bare(given);
  const { operation } = of;
  if (!(of.low >= 0) || of.mayLack || !(of.high < Number.MAX_VALUE)) return false;
  if (
    operation.kind === 'multiply' &&
    fixedValue(operation.left) === null &&
    fixedValue(operation.right) === null
  )
    return gather(operation.left, exponent, into) && gather(operation.right, exponent, into);
  if (operation.kind === 'power' && operation.exponent > 0) {
    return gather(operation.of, exponent * operation.exponent, into);
  }
  if (operation.kind === 'squareRoot') return gather(operation.of, exponent / 2, into);
  into.set(of, (into.get(of) ?? 0) + exponent);
  return true;
}

function wholePower(nodes: Nodes, of: Node, exponent: number): Node {
  if (exponent === 1) return of;
  const ends: Ends = { low: of.low ** exponent, high: of.high ** exponent * 1.000001, mayLack: false };
  return nodes.power(of, exponent, ends);
}
