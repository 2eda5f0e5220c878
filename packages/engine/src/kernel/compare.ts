import { LARGEST_EXPONENT } from './approximate.ts';
import { EPSILON, type Form, greatestOf, roundingOf } from './form.ts';
import { bare, type Condition, factorOf, fixedValue, type Node, type Nodes } from './node.ts';
import type { Roughen } from './roughened.ts';
import { absoluteOf, ROUNDED, relativeOf, sizeOf } from './slack.ts';

/**
 * What decides whether the canonical evaluator would say that a value meets a limit.
 *
 * How to consume it: an atom holds where `value operator threshold`, and is certain where the
 * value is further than `guard` from the threshold; a guard of 0 is always certain. A point that
 * any atom leaves uncertain must be decided by the canonical evaluator. A value that is NaN is
 * certain, holds no atom, and is NaN for the canonical evaluator too.
 */
export type Test = { kind: 'always' | 'never' } | Atom | { kind: 'all' | 'any'; tests: readonly Test[] };

/**
 * A comparison; `size` is the greatest distance of a value to the threshold. Where there is a `unit`, the
 * guard counts in the value that this positive node has at the point.
 */
export interface Atom {
  kind: 'atom';
  value: Value;
  operator: Operator;
  threshold: number;
  guard: number;
  unit: Node | null;
  size: number;
  preview?: Preview;
}

/**
 * A cheaper node that mostly decides an atom: where it is less than `low` the atom's value surely is
 * below its threshold, where it is more than `high` above. Between them the value itself must be formed.
 */
interface Preview {
  node: Node;
  low: number;
  high: number;
}

/** P of a form, or what a node computes. */
export type Value = { kind: 'form'; form: Form } | { kind: 'node'; node: Node };
type Operator = '<' | '<=' | '>' | '>=';

const always: Test = { kind: 'always' };
const never: Test = { kind: 'never' };

const mirrored: Record<Operator, Operator> = { '<': '>', '<=': '>=', '>': '<', '>=': '<=' };
const opposite: Record<Operator, Operator> = { '<': '>=', '<=': '>', '>': '<=', '>=': '<' };
/** A guard of at most this share of the size leaves hardly a point uncertain. */
const FINE = 1e-9;
/** A guard of at most this share of the value at the point itself does so too. */
const COARSE = 1e-5;

/** Far above the least numbers that a double holds, 1 over it far below the greatest. */
const SMALLEST = 1e-300;

const isUpper = (operator: Operator): boolean => operator === '<' || operator === '<=';

/** Tests of one program. */
export interface Tests {
  /** Whether a node lies between two doubles, ends included; NaN and infinities do not. */
  within(node: Node, least: number, greatest: number): Test;
  /** Whether a node is finite. */
  isFinite(node: Node): Test;
  holds(condition: Condition): Test;
  /** Whether a condition is known not to hold; where a side is missing, neither this nor `holds` is true. */
  failsToHold(condition: Condition): Test;
}

/**
 * A test of forms alone that holds wherever the test holds or is uncertain.
 */
export function loosened(test: Test): Test {
  if ('tests' in test) {
    const tests = test.tests.map(loosened);
    return test.kind === 'all' ? all(...tests) : any(...tests);
  }
  if (test.kind !== 'atom') return test;
  const { value, operator, threshold, guard, size } = test;
  if (value.kind !== 'form' || !Number.isFinite(guard)) return always;
  const wider = threshold + 1.01 * guard * (isUpper(operator) ? 1 : -1);
  return { kind: 'atom', value, operator, threshold: wider, guard: 0, unit: null, size };
}

/**
 * Rewrites comparisons until what is compared is cheap to form: constants go to the other side,
 * quotients become products by the sign of their divisor, roots become squares, exp, ln and powers
 * are taken back, extremes and choices become 'and' and 'or', and polynomials of degree 2 become
 * one form. Where no rule fits the node is computed.
 *
 * All along a threshold g stands for some number within g ± width: each rule widens it by what the
 * canonical evaluator rounds on the way, so the width that arrives is a proven one.
 *
 * @param total parts that make the whole
 * @param elements the most elements of a system
 */
export function testsOf(nodes: Nodes, roughen: Roughen, total: number, elements: number): Tests {
  /** Where the node's canonical value stands to a number within threshold ± width. */
  function compare(given: Node, operator: Operator, beyond: number, width: number): Test {
    const node = bare(given);
    // No finite number lies beyond the greatest one, and times 0 an infinite one would be no number.
    const threshold = Math.max(-Number.MAX_VALUE, Math.min(Number.MAX_VALUE, beyond));
    const known = decided(node, operator, threshold, width);
    if (known) return known;
    const { operation } = node;
    if (operation.kind === 'form') {
      const { base, factor } = operation;
      const side = factor > 0 ? operator : mirrored[operator];
      const slack =
        (node.form!.slack.absolute + node.form!.slack.relative * Math.abs(threshold) + width) /
        Math.abs(factor);
      return formAtom(base, side, threshold / factor, slack, distance(node, threshold) / Math.abs(factor));
    }
    const pushed = throughConstants(node, operator, threshold, width);
    if (pushed) return pushed;
    if (node.form) {
      const { form, slack } = node.form;
      const from = absoluteOf({ ...node, slack }) + width;
      return formAtom(
        form,
        operator,
        threshold / form.scale,
        from / form.scale,
        distance(node, threshold) / form.scale,
      );
    }
    return throughOperation(node, operator, threshold, width) ?? nodeAtom(node, operator, threshold, width);
  }

  function formAtom(
    form: Form,
    operator: Operator,
    threshold: number,
    slack: number,
    greatest: number,
  ): Test {
    if (form.exact) {
      const guard = slack === 0 ? 0 : slack + 4 * EPSILON * Math.abs(threshold);
      const certain = guard === 0 || Math.ceil(threshold - guard) > Math.floor(threshold + guard);
      return {
        kind: 'atom',
        value: { kind: 'form', form },
        operator,
        threshold,
        guard: certain ? 0 : guard,
        unit: null,
        size: greatest,
      };
    }
    const size = greatestOf(form, total) + Math.abs(threshold);
    const guard = slack + roundingOf(form, total, elements) + ROUNDED * size;
    return {
      kind: 'atom',
      value: { kind: 'form', form },
      operator,
      threshold,
      guard,
      unit: null,
      size: Math.min(size, greatest) + guard,
    };
  }

  function nodeAtom(node: Node, operator: Operator, threshold: number, width: number): Test {
    const { absolute, relative } = node.slack;
    const guard = absolute + (relative === 0 ? 0 : 1.1 * relative * (Math.abs(threshold) + width)) + width;
    const rounding = ROUNDED * Math.abs(threshold) + Number.MIN_VALUE;
    const value: Value = { kind: 'node', node };
    const size = distance(node, threshold) + guard;
    return { kind: 'atom', value, operator, threshold, guard: guard + rounding, unit: null, size };
  }

  /** Rules for arithmetic with one constant. */
  function throughConstants(node: Node, operator: Operator, threshold: number, width: number): Test | null {
    const { operation } = node;
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
      operation.kind === 'multiply'
        ? (left ?? right)
        : operation.kind === 'divide' && right
          ? 1 / right
          : null;
    if (factor === null || factor === 0 || !Number.isFinite(factor)) return null;
    const of = left === null ? operation.left : operation.right;
    const moved = operation.kind === 'divide' ? threshold * right! : threshold / factor;
    const side = factor > 0 ? operator : mirrored[operator];
    return compare(of, side, moved, rounded / Math.abs(factor));
  }

  function throughOperation(node: Node, operator: Operator, threshold: number, width: number): Test | null {
    const { operation } = node;
    switch (operation.kind) {
      case 'squareRoot':
        return throughRoot(operation.of, operator, threshold, width);
      case 'absolute':
        return throughAbsolute(operation.of, operator, threshold, width);
      case 'exponential': {
        if (!(threshold - width > 0)) return null;
        const wider = (1.01 * width) / (threshold - width) + 16 * EPSILON;
        return compare(
          operation.of,
          operator,
          Math.log(threshold),
          wider + ROUNDED * Math.abs(Math.log(threshold)),
        );
      }
      case 'logarithm': {
        const power = Math.exp(threshold);
        if (!(width < 0.01) || !(power > 1e-300 && power < 1e300)) return null;
        const wider = power * (1.1 * width + ROUNDED * (1 + Math.abs(threshold)));
        return all(notNegative(operation.of), compare(operation.of, operator, power, wider));
      }
      case 'power':
        return throughPower(operation.of, operation.exponent, operator, threshold, width);
      case 'lesser':
      case 'greater': {
        const both = [operation.left, operation.right].map((one) => compare(one, operator, threshold, width));
        const missing = [operation.left, operation.right].filter(mayBeNaN).map(isNumber);
        const every = isUpper(operator) === (operation.kind === 'greater');
        return all(...missing, every ? all(...both) : any(...both));
      }
      case 'choose':
        return choiceOf(operation, (one) => compare(one, operator, threshold, width));
      case 'divide':
        return throughQuotient(node, operation.left, bare(operation.right), operator, threshold, width);
      default:
        return null;
    }
  }

  function throughRoot(of: Node, operator: Operator, threshold: number, width: number): Test {
    if (threshold + width < 0) return isUpper(operator) ? never : notNegative(of);
    const squared = threshold * threshold;
    const wider = (2 * Math.abs(threshold) + width) * width + 2 * ROUNDED * squared;
    const positive = Math.max(0, threshold);
    // What squares to 0 though it is more lies below every root but that of 0.
    const isTiny = positive > 0 && squared === 0;
    const side = isTiny ? (isUpper(operator) ? '<=' : '>') : operator;
    return all(notNegative(of), compare(of, side, positive * positive, wider));
  }

  function throughAbsolute(of: Node, operator: Operator, threshold: number, width: number): Test {
    const sides = [
      compare(of, operator, threshold, width),
      compare(of, mirrored[operator], -threshold, width),
    ];
    return isUpper(operator) ? all(...sides) : any(...sides);
  }

  function throughPower(
    of: Node,
    exponent: number,
    operator: Operator,
    threshold: number,
    width: number,
  ): Test | null {
    if (!(threshold - width > 0) || exponent === 0 || of.low < 0 || (exponent < 0 && of.least === 0))
      return null;
    const root = threshold ** (1 / exponent);
    if (!(root > 1e-300 && root < 1e300)) return null;
    const relative = width / (threshold - width) + 16 * EPSILON;
    const wider = 1.1 * root * (relative / Math.abs(exponent) + ROUNDED);
    if (!(relative / Math.abs(exponent) < 0.01)) return null;
    return compare(of, exponent > 0 ? operator : mirrored[operator], root, wider);
  }

  /** a/b against g is a − g b against 0, by the sign of b; x/0 is infinite with the sign of x, as a − g b says too. */
  function throughQuotient(
    quotient: Node,
    above: Node,
    below: Node,
    operator: Operator,
    threshold: number,
    width: number,
  ): Test | null {
    const wider = width + ROUNDED * (Math.abs(threshold) + width);
    const numerator = fixedValue(above);
    if (numerator !== null && numerator > 0 && below.low >= 0 && threshold - wider > 0) {
      const least = numerator / threshold;
      const relative = wider / (threshold - wider) + ROUNDED;
      return compare(below, mirrored[operator], least, 1.01 * relative * least);
    }
    const ratio = ratioOfExponentials(above, below, operator, threshold, wider);
    if (ratio) return ratio;
    const twofold = quotientOfQuotient(above, below, operator, threshold, wider);
    if (twofold) return twofold;
    const direct = nodeAtom(quotient, operator, threshold, width);
    if (below.low >= 0) {
      const without = rootAgainst(above, below, operator, threshold, wider) ?? product(operator);
      return better(without, direct);
    }
    if (below.high < 0) return better(product(mirrored[operator]), direct);
    if (below.mayLack || above.mayLack) return null;
    return any(
      all(compare(below, '>=', 0, 0), product(operator)),
      all(compare(below, '<', 0, 0), product(mirrored[operator])),
    );

    function product(side: Operator): Test {
      const inverse = 1 / factorOf(above);
      const factor = Number.isFinite(threshold * inverse) ? inverse : 1;
      const moved = nodes.binary(
        'subtract',
        factor === 1 ? above : nodes.binary('multiply', nodes.constant(factor), above),
        nodes.binary('multiply', nodes.constant(threshold * factor), below),
      );
      return compare(moved, side, 0, wider * sizeOf(below) * factor * 1.01);
    }
  }

  /** a/(b/c) against g is a c/b against g: without a division, and often one form. */
  function quotientOfQuotient(
    above: Node,
    below: Node,
    operator: Operator,
    threshold: number,
    width: number,
  ): Test | null {
    const { operation } = below;
    if (operation.kind !== 'divide' || below.mayLack || above.mayLack) return null;
    const [numerator, divisor] = [operation.left, bare(operation.right)];
    if (!(below.low > 0 && numerator.low > 0 && divisor.low > 0)) return null;
    const product = nodes.binary('multiply', above, divisor);
    if (product.form === null || numerator.form === null) return null;
    const moved = nodes.binary(
      'subtract',
      product,
      nodes.binary('multiply', nodes.constant(threshold), numerator),
    );
    const wider = width + 2 * ROUNDED * (Math.abs(threshold) + width);
    return compare(moved, operator, 0, 1.01 * wider * sizeOf(numerator));
  }

  /**
   * a/b against g, both positive and made of exponentials, which may be small at one point and huge at
   * another: a − g b against 0, with a guard in parts of g b, for which rough exponentials are good enough.
   */
  function ratioOfExponentials(
    above: Node,
    below: Node,
    operator: Operator,
    threshold: number,
    width: number,
  ): Test | null {
    const [upper, lower] = [roughen(above), roughen(below)];
    if (upper === above && lower === below) return null;
    if (above.mayLack || below.mayLack || above.low < 0 || below.low < 0) return null;
    if (!(threshold - width > 0)) return null;
    const relative = relativeOf(upper) + relativeOf(lower) + width / (threshold - width) + 4 * ROUNDED;
    if (!(relative <= COARSE)) return null;
    const unit = nodes.binary('multiply', nodes.constant(threshold), lower);
    const node = nodes.binary('subtract', upper, unit);
    const value: Value = { kind: 'node', node };
    const size = distance(node, 0);
    const atom: Atom = { kind: 'atom', value, operator, threshold: 0, guard: 1.1 * relative, unit, size };
    const preview = previewOf(upper, lower, threshold);
    return preview === null ? atom : { ...atom, preview };
  }

  /** A sum of n powers of two lies between its greatest term and n times that: a difference of exponents tells most. */
  function previewOf(above: Node, below: Node, threshold: number): Preview | null {
    const [upper, lower] = [exponentsOf(above), exponentsOf(below)];
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
  function exponentsOf(node: Node): Node[] | null {
    const { operation } = node;
    const value = fixedValue(node);
    if (value !== null) return value > 0 ? [nodes.constant(Math.log2(value))] : null;
    if (operation.kind === 'powerOfTwo') return [operation.of];
    if (operation.kind !== 'add') return null;
    const [left, right] = [exponentsOf(operation.left), exponentsOf(operation.right)];
    return left && right && [...left, ...right];
  }

  /** k √v against g b, both not negative: k² v against g² b². */
  function rootAgainst(
    above: Node,
    below: Node,
    operator: Operator,
    threshold: number,
    width: number,
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

  /** The one of two tests that leaves fewer points uncertain, the first where it is fine. */
  function better(first: Test, second: Test): Test {
    const isFine = (test: Test): boolean =>
      'tests' in test ? test.tests.every(isFine) : test.kind !== 'atom' || test.guard <= FINE * test.size;
    return isFine(first) || !isFine(second) ? first : second;
  }

  function holds({ left, operator, right }: Condition): Test {
    return against(left, operator, right);
  }

  function failsToHold({ left, operator, right }: Condition): Test {
    return against(left, opposite[operator], right);
  }

  function against(left: Node, operator: Operator, right: Node): Test {
    const [first, second] = [fixedValue(left), fixedValue(right)];
    if (second !== null) return compare(left, operator, second, 0);
    if (first !== null) return compare(right, mirrored[operator], first, 0);
    return compare(nodes.binary('subtract', left, right), operator, 0, 0);
  }

  function notNegative(of: Node): Test {
    return of.low >= 0 ? isNumber(of) : compare(of, '>=', 0, 0);
  }

  /** Whether a node is not NaN. */
  function isNumber(given: Node): Test {
    const node = bare(given);
    const { operation } = node;
    if (!mayBeNaN(node)) return always;
    if (operation.kind === 'choose') return choiceOf(operation, isNumber);
    if (operation.kind === 'divide') {
      const both = [operation.left, bare(operation.right)];
      const oneIsFinite = both.every(mayBeInfinite) ? any(...both.map(isFiniteNode)) : always;
      return all(...both.map(isNumber), any(...both.map((one) => isApart(one))), oneIsFinite);
    }
    if (operation.kind === 'lesser' || operation.kind === 'greater') {
      return all(isNumber(operation.left), isNumber(operation.right));
    }
    if ('of' in operation && operation.kind !== 'away') {
      const signed =
        operation.kind === 'power'
          ? !Number.isInteger(operation.exponent)
          : operation.kind === 'squareRoot' || operation.kind === 'logarithm';
      return signed ? notNegative(operation.of) : isNumber(operation.of);
    }
    if ('left' in operation) {
      const { kind, left, right } = operation;
      const numbers = all(isNumber(left), isNumber(right));
      if (kind === 'multiply') return all(numbers, isDefined(left, right), isDefined(right, left));
      // ∞ − ∞
      if (!mayBeInfinite(left) || !mayBeInfinite(right)) return numbers;
    }
    return nodeAtom(node, '>=', Number.NEGATIVE_INFINITY, 0);
  }

  /** Whether one side of a product is not infinite where the other is 0; no more is asked of it. */
  function isDefined(one: Node, other: Node): Test {
    if (!mayBeInfinite(one) || other.least > 0) return always;
    return any(isFiniteNode(one), isApart(other));
  }

  /** Whether a node is not 0, nor within a width of it. */
  function isApart(node: Node, width = 0): Test {
    return any(compare(node, '>', 0, width), compare(node, '<', 0, width));
  }

  function choiceOf(
    { when, then, otherwise }: { when: Condition; then: Node; otherwise: Node | null },
    test: (node: Node) => Test,
  ): Test {
    const chosen = all(holds(when), test(then));
    return otherwise === null ? chosen : any(chosen, all(failsToHold(when), test(otherwise)));
  }

  /**
   * Sums and products of finite numbers are taken to be finite where their ends say so, and where a side may be
   * infinite: what else it may be is not far from 1.
   */
  function isFiniteNode(given: Node): Test {
    const node = bare(given);
    if (!node.mayLack) return always;
    const { operation } = node;
    switch (operation.kind) {
      case 'choose':
        return choiceOf(operation, isFiniteNode);
      case 'divide': {
        const below = bare(operation.right);
        // A polynomial is 0 or not next to nothing; an exponential may be so small that the quotient is infinite.
        const near = below.form ? 0 : SMALLEST * Math.min(sizeOf(operation.left), 1 / Math.sqrt(SMALLEST));
        // Over an infinite divisor it is 0.
        return all(isFiniteNode(operation.left), isNumber(below), isApart(below, near));
      }
      case 'squareRoot':
        return all(isFiniteNode(operation.of), notNegative(operation.of));
      case 'logarithm':
        return all(isFiniteNode(operation.of), compare(operation.of, '>', 0, 0));
      case 'negate':
      case 'absolute':
        return isFiniteNode(operation.of);
      case 'exponential':
        if (operation.of.high <= LARGEST_EXPONENT) return isNumber(operation.of);
        break;
      case 'add':
      case 'subtract':
      case 'multiply': {
        const [left, right] = [sizeOf(operation.left), sizeOf(operation.right)];
        const isOpen = Math.max(left, right) === Number.POSITIVE_INFINITY;
        const most = operation.kind === 'multiply' ? left * right : left + right;
        if (!isOpen && !(most < 1 / SMALLEST)) break;
        return all(isFiniteNode(operation.left), isFiniteNode(operation.right));
      }
      case 'lesser':
      case 'greater': {
        const sides = [operation.left, operation.right];
        // A finite side holds an infinite one, where that lies on the other end: Ω of ΔH = 0.
        const held = sides.every(({ low, high }) =>
          operation.kind === 'lesser' ? low > Number.NEGATIVE_INFINITY : high < Number.POSITIVE_INFINITY,
        );
        if (held && sides.some(({ mayLack }) => !mayLack)) return all(...sides.map(isNumber));
        const cut = fixedValue(operation.left) ?? fixedValue(operation.right);
        if (cut === null) break;
        const of = fixedValue(operation.left) === null ? operation.left : operation.right;
        const beyond = compare(of, operation.kind === 'lesser' ? '>=' : '<=', cut, 0);
        return all(isNumber(of), any(isFiniteNode(of), beyond));
      }
    }
    return all(compare(node, '>=', -Number.MAX_VALUE, 0), compare(node, '<=', Number.MAX_VALUE, 0));
  }

  return {
    within(node, least, greatest) {
      const sides = [
        ...(least === -Number.MAX_VALUE ? [] : [compare(node, '>=', least, 0)]),
        ...(greatest === Number.MAX_VALUE ? [] : [compare(node, '<=', greatest, 0)]),
      ];
      return all(...sides, ...(sides.length < 2 ? [isFiniteNode(node)] : []));
    },
    isFinite: isFiniteNode,
    holds,
    failsToHold,
  };
}

/** The greatest distance of a node to a threshold, with room for what is rounded. */
function distance({ low, high }: Node, threshold: number): number {
  return 1.001 * Math.max(Math.abs(low - threshold), Math.abs(high - threshold));
}

/** All of some tests. */
function all(...tests: Test[]): Test {
  if (tests.some(({ kind }) => kind === 'never')) return never;
  const open = tests.filter(({ kind }) => kind !== 'always');
  if (open.length < 2) return open[0] ?? always;
  return { kind: 'all', tests: open };
}

/** Any of some tests. */
function any(...tests: Test[]): Test {
  if (tests.some(({ kind }) => kind === 'always')) return always;
  const open = tests.filter(({ kind }) => kind !== 'never');
  if (open.length < 2) return open[0] ?? never;
  return { kind: 'any', tests: open };
}

/** A comparison that the ends of the canonical value decide; a point that may lack a value is not passed so. */
function decided(node: Node, operator: Operator, threshold: number, width: number): Test | null {
  const { low, high, mayLack } = node;
  if (Number.isNaN(low) || Number.isNaN(high)) return null;
  const rounding = node.operation.kind === 'constant' ? 0 : ROUNDED * sizeOf(node) + Number.MIN_VALUE;
  const [lower, upper] = [threshold - width - rounding, threshold + width + rounding];
  const [holdsAll, holdsNone] = {
    '<': [high < lower, low >= upper],
    '<=': [high <= lower, low > upper],
    '>': [low > upper, high <= lower],
    '>=': [low >= upper, high < lower],
  }[operator];
  if (holdsNone) return never;
  return holdsAll && !mayLack ? always : null;
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

/** A node that may be infinite has an infinite end. */
function mayBeInfinite({ low, high, mayLack }: Node): boolean {
  return mayLack && !(Number.isFinite(low) && Number.isFinite(high));
}

/** Whether a node may be NaN, and not only infinite. */
function mayBeNaN(node: Node): boolean {
  if (!node.mayLack) return false;
  const { operation } = bare(node);
  switch (operation.kind) {
    case 'form':
    case 'entropy':
      return false;
    case 'constant':
      return Number.isNaN(operation.value);
    case 'absolute':
    case 'negate':
    case 'exponential':
    case 'powerOfTwo':
      return mayBeNaN(operation.of);
    case 'divide': {
      const [above, below] = [operation.left, bare(operation.right)];
      const zeros = above.low <= 0 && above.high >= 0 && below.low <= 0 && below.high >= 0;
      return zeros || above.mayLack || below.mayLack;
    }
    case 'lesser':
    case 'greater':
      return mayBeNaN(operation.left) || mayBeNaN(operation.right);
    default:
      return true;
  }
}
