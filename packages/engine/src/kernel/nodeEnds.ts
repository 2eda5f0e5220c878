import type { Ends, Node } from './node.ts';
import { sizeOf } from './slack.ts';

const orZero = (value: number) => (Number.isNaN(value) ? 0 : value);

/** Ends of what the kernel computes beside the program's own steps, from the ends of its operands. */
export const endsOf = {
  add: (left: Node, right: Node): Ends => finite(left.low + right.low, left.high + right.high, left, right),
  subtract: (left: Node, right: Node): Ends =>
    finite(left.low - right.high, left.high - right.low, left, right),
  multiply(left: Node, right: Node): Ends {
    const all = [left.low * right.low, left.low * right.high, left.high * right.low, left.high * right.high];
    const products = all.map(orZero);
    return finite(Math.min(...products), Math.max(...products), left, right);
  },
  divide(left: Node, right: Node): Ends {
    if (right.low <= 0 && right.high >= 0) {
      return { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY, mayLack: true };
    }
    const all = [left.low / right.low, left.low / right.high, left.high / right.low, left.high / right.high];
    const quotients = all.map(orZero);
    return finite(Math.min(...quotients), Math.max(...quotients), left, right);
  },
  lesser: (left: Node, right: Node): Ends =>
    finite(Math.min(left.low, right.low), Math.min(left.high, right.high), left, right),
  greater: (left: Node, right: Node): Ends =>
    finite(Math.max(left.low, right.low), Math.max(left.high, right.high), left, right),
  negate: (of: Node): Ends => ({ low: -of.high, high: -of.low, mayLack: of.mayLack }),
  absolute: (of: Node): Ends => ({ low: of.least, high: sizeOf(of), mayLack: of.mayLack }),
  squareRoot: (of: Node): Ends => finite(Math.sqrt(Math.max(0, of.low)), Math.sqrt(of.high), of, of),
  exponential: (of: Node): Ends => finite(0, 1.01 * Math.exp(of.high), of, of),
  powerOfTwo: (of: Node): Ends => finite(0, 1.01 * 2 ** of.high, of, of),
  logarithm: (of: Node): Ends => ({
    low: Number.NEGATIVE_INFINITY,
    high: Math.log(of.high) + 1,
    mayLack: true,
  }),
  power: (_: Node): Ends => ({
    low: Number.NEGATIVE_INFINITY,
    high: Number.POSITIVE_INFINITY,
    mayLack: true,
  }),
};

function finite(low: number, high: number, left: Node, right: Node): Ends {
  const mayLack = left.mayLack || right.mayLack || !Number.isFinite(low) || !Number.isFinite(high);
  return { low, high, mayLack };
}

/** Ends of factor · node. */
export function scaledEnds({ low, high, mayLack }: Node, factor: number): Ends {
  const [one, other] = [low * factor, high * factor];
  return { low: Math.min(one, other), high: Math.max(one, other), mayLack };
}
