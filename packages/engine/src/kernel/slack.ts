import { EPSILON } from './form.ts';

/**
 * How far two computations of one number may lie apart: at most absolute + relative · |value|.
 * Infinite where nothing is known.
 */
export interface Slack {
  absolute: number;
  relative: number;
}

/** What is known of a number before it is computed: its ends, the least size that it has, and its slack. */
export interface Known {
  low: number;
  high: number;
  least: number;
  slack: Slack;
}

export const noSlack: Slack = { absolute: 0, relative: 0 };
export const unknown: Slack = { absolute: Number.POSITIVE_INFINITY, relative: 0 };

/** Both computations round once or twice. */
export const ROUNDED = 8 * EPSILON;
/** Factor for the products of small errors. */
const SECOND_ORDER = 1.1;
/** Relative errors above it are taken for unknown: the bounds below hold for small ones. */
const LARGEST = 0.01;

/** The greatest size of a number. */
export const sizeOf = ({ low, high }: Known): number => Math.max(Math.abs(low), Math.abs(high));

/** 0 · ∞ is 0 where the 0 is an error that does not exist. */
const times = (error: number, size: number): number => (error === 0 ? 0 : error * size);

/** The slack as one absolute number. */
export function absoluteOf(of: Known): number {
  return of.slack.absolute + times(of.slack.relative, sizeOf(of));
}

/** The slack as one relative number. */
export function relativeOf({ slack, least }: Known): number {
  return slack.relative + (slack.absolute === 0 ? 0 : slack.absolute / least);
}

function checked(absolute: number, relative: number): Slack {
  const known = relative <= LARGEST && absolute < Number.MAX_VALUE;
  return known ? { absolute, relative } : unknown;
}

/** The slack of what an operator computes of numbers that are known up to theirs. */
export const slackOf = {
  add(left: Known, right: Known): Slack {
    const sameSign = (left.low >= 0 && right.low >= 0) || (left.high <= 0 && right.high <= 0);
    if (!sameSign) {
      const [small, large] = sizeOf(left) < sizeOf(right) ? [left, right] : [right, left];
      if (sizeOf(large) < Number.MAX_VALUE) return checked(absoluteOf(left) + absoluteOf(right), ROUNDED);
      // The large one is no larger than the sum and the small one together.
      const more = large.slack.absolute + times(large.slack.relative, sizeOf(small));
      return checked(absoluteOf(small) + more, large.slack.relative + ROUNDED);
    }
    const relative = Math.max(left.slack.relative, right.slack.relative);
    return checked(left.slack.absolute + right.slack.absolute, relative + ROUNDED);
  },
  multiply(left: Known, right: Known): Slack {
    const [a, b] = [left.slack, right.slack];
    const absolute = times(b.absolute, sizeOf(left)) + times(a.absolute, sizeOf(right));
    return checked(
      SECOND_ORDER * (absolute + a.absolute * b.absolute),
      SECOND_ORDER * (a.relative + b.relative) + ROUNDED,
    );
  },
  divide(left: Known, right: Known): Slack {
    const relative = relativeOf(right);
    if (!(relative <= LARGEST)) return unknown;
    const { absolute } = left.slack;
    return checked(
      absolute === 0 ? 0 : (SECOND_ORDER * absolute) / right.least,
      SECOND_ORDER * (left.slack.relative + relative) + ROUNDED,
    );
  },
  /** Both ways choose the same side, or sides that lie so close together that their errors are of one size. */
  extreme(left: Known, right: Known): Slack {
    const [a, b] = [left.slack, right.slack];
    return checked(SECOND_ORDER * (a.absolute + b.absolute), SECOND_ORDER * Math.max(a.relative, b.relative));
  },
  either(one: Slack, other: Slack): Slack {
    return checked(Math.max(one.absolute, other.absolute), Math.max(one.relative, other.relative));
  },
  squareRoot(of: Known): Slack {
    const relative = relativeOf(of);
    if (relative <= 1e-6) return checked(0, relative + ROUNDED);
    return checked(1.5 * Math.sqrt(of.slack.absolute), of.slack.relative + ROUNDED);
  },
  /** @param own relative error of both ways to compute it */
  exponential(of: Known, own: number): Slack {
    const absolute = absoluteOf(of);
    return absolute <= LARGEST ? checked(1e-299, SECOND_ORDER * absolute + own) : unknown;
  },
  /** @param own absolute error of both ways to compute it */
  logarithm(of: Known, own: number): Slack {
    const relative = relativeOf(of);
    return relative <= LARGEST ? checked(SECOND_ORDER * relative + own, ROUNDED) : unknown;
  },
  /** @param own relative error of both ways to compute it */
  power(of: Known, exponent: number, own: number): Slack {
    const relative = relativeOf(of);
    const size = Math.abs(exponent);
    if (size * relative <= 1e-6) return checked(0, SECOND_ORDER * size * relative + own);
    if (exponent < 0) return unknown;
    const { absolute } = of.slack;
    const first =
      exponent < 1
        ? (2 * absolute) ** exponent
        : exponent * (sizeOf(of) + absolute) ** (exponent - 1) * absolute;
    return checked(SECOND_ORDER * first, SECOND_ORDER * size * of.slack.relative + own);
  },
};
