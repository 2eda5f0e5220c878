import {
  EXPONENTIAL_ERROR,
  LARGEST_EXPONENT,
  LARGEST_POWER_OF_TWO,
  LOGARITHM_ERROR,
  POWER_OF_TWO_ERROR,
} from './approximate.ts';
import { constantForm, roundingOf } from './form.ts';
import { isFar } from './isFar.ts';
import {
  type BinaryKind,
  type Ends,
  fixedValue,
  type Node,
  type Nodes,
  type Operation,
  type UnaryKind,
} from './node.ts';
import { endsOf, scaledEnds } from './nodeEnds.ts';
import { formOf, negated, scaledFormOf } from './nodeForms.ts';
import { noSlack, ROUNDED, type Slack, sizeOf, slackOf, unknown } from './slack.ts';

/** A relative slack that leaves few points to the canonical evaluator. */
const NEGLIGIBLE = 1e-7;

/** What is cut off at 0, where a node is that. */
function cutAtZero({ operation }: Node): Node | null {
  if (operation.kind !== 'greater' && operation.kind !== 'lesser') return null;
  if (fixedValue(operation.left) === 0) return operation.right;
  return fixedValue(operation.right) === 0 ? operation.left : null;
}

/**
 * @param size elements of the pool
 * @param total parts that make the whole
 * @param elements the most elements of a system
 */
export function nodeMaker(size: number, total: number, elements: number): Nodes {
  const known = new Map<string, Node>();
  let count = 0;

  function node(
    key: string,
    operation: Operation,
    ends: Ends,
    slack: () => Slack,
    form: () => Node['form'] = () => null,
  ): Node {
    const before = known.get(key);
    if (before) return before;
    const { low, high, mayLack } = ends;
    const least = low > 0 ? low : high < 0 ? -high : 0;
    const made: Node = { id: count, operation, low, high, mayLack, least, slack: slack(), form: form() };
    count += 1;
    known.set(key, made);
    return made;
  }

  /**
   * A node of which points near 0 are left to the canonical evaluator, so that its absolute slack
   * becomes a relative one. What is cut off at 0 is exactly 0 beyond the cut, and stays so.
   */
  function away(of: Node): Node {
    const { absolute, relative } = of.slack;
    if (absolute === 0 || absolute / of.least <= NEGLIGIBLE || of.operation.kind === 'away') return of;
    const least = absolute / NEGLIGIBLE;
    if (!(least < sizeOf(of) / 100)) return of;
    const before = known.get(`away ${of.id}`);
    if (before) return before;
    const guard = cutAtZero(of);
    const made: Node = { ...of, id: count, operation: { kind: 'away', of, guard: guard ?? of, least } };
    made.slack = { absolute: 0, relative: relative + NEGLIGIBLE };
    if (!guard) made.least = least;
    if (!guard && of.low >= 0) made.low = least;
    if (!guard && of.high <= 0) made.high = -least;
    count += 1;
    known.set(`away ${of.id}`, made);
    return made;
  }

  /** Where a sign decides whether there is a value at all, the kernel must be sure of it. */
  const signed = (of: Node): Node => (of.low < 0 ? away(of) : of);

  function constant(value: number): Node {
    const ends = { low: value, high: value, mayLack: !Number.isFinite(value) };
    const form = () => (Number.isFinite(value) ? { form: constantForm(value, size), slack: noSlack } : null);
    return node(
      `constant ${Object.is(value, -0) ? '-0' : value}`,
      { kind: 'constant', value },
      ends,
      () => noSlack,
      form,
    );
  }

  /** factor · node without a multiplication of its own, where there is a factor already that can take it; else null. */
  function scaled(of: Node, factor: number, ends: Ends): Node | null {
    const { operation } = of;
    if (factor === 0 || !Number.isFinite(factor)) return null;
    const slack = (): Slack => {
      const { absolute, relative } = of.slack;
      return { absolute: absolute * Math.abs(factor), relative: relative + ROUNDED };
    };
    const made = (what: Operation): Node =>
      node(`scaled ${of.id} ${factor}`, what, ends, slack, () => scaledFormOf(of, factor));
    if (operation.kind === 'form') {
      const both = operation.factor * factor;
      return isFar(both) ? null : made({ ...operation, factor: both });
    }
    if (operation.kind === 'multiply') {
      const { left, right } = operation;
      const value = fixedValue(left);
      if (value !== null && isFar(value * factor)) return null;
      const one = value === null ? scaled(left, factor, scaledEnds(left, factor)) : constant(value * factor);
      return one && made({ kind: 'multiply', left: one, right });
    }
    if (operation.kind === 'absolute' && factor > 0) {
      const inner = scaled(operation.of, factor, scaledEnds(operation.of, factor));
      return inner && made({ kind: 'absolute', of: inner });
    }
    return null;
  }

  function binary(kind: BinaryKind, left: Node, right: Node, given?: Ends): Node {
    const ends = given ?? endsOf[kind](left, right);
    const [first, second] = [fixedValue(left), fixedValue(right)];
    const factor = kind === 'multiply' ? (first ?? second) : kind === 'divide' && second ? 1 / second : null;
    if (factor !== null) {
      const one = scaled(first === null ? left : right, factor, ends);
      if (one) return one;
    }
    if (kind === 'multiply') {
      const moved = movedFactor(left, right, ends) ?? movedFactor(right, left, ends);
      if (moved) return moved;
    }
    if (kind === 'lesser' || kind === 'greater') {
      const dropped = withoutIdleSide(kind, left, right);
      if (dropped) return dropped;
    }
    if (kind === 'divide') return divide(left, right, ends);
    const slack = (): Slack => {
      if (kind === 'add') return slackOf.add(left, right);
      if (kind === 'subtract') return slackOf.add(left, negated(right));
      if (kind === 'multiply') return slackOf.multiply(left, right);
      return slackOf.extreme(left, right);
    };
    const form = () => formOf(kind, left, right, total);
    return node(`${kind} ${left.id} ${right.id}`, { kind, left, right }, ends, slack, form);
  }

  /** a · (k · b) as (k · a) · b, where a has a factor already. */
  function movedFactor(taking: Node, giving: Node, ends: Ends): Node | null {
    const { operation } = giving;
    if (taking.operation.kind !== 'form' || operation.kind !== 'multiply') return null;
    const value = fixedValue(operation.left);
    const one = value === null ? null : scaled(taking, value, scaledEnds(taking, value));
    if (one === null) return null;
    const slack = () => slackOf.multiply(taking, giving);
    const product = { kind: 'multiply', left: one, right: operation.right } as const;
    return node(`moved ${taking.id} ${giving.id}`, product, ends, slack, () =>
      formOf('multiply', taking, giving, total),
    );
  }

  function divide(left: Node, right: Node, ends: Ends): Node {
    const divisor = away(right);
    const form = () => {
      const value = fixedValue(right);
      return value === null || value === 0 ? null : scaledFormOf(left, 1 / value);
    };
    const operation = { kind: 'divide', left, right: divisor } as const;
    const slack = () => slackOf.divide(left, divisor);
    return node(`divide ${left.id} ${right.id}`, operation, ends, slack, form);
  }

  function unary(kind: UnaryKind, given: Node, ends: Ends = endsOf[kind](given)): Node {
    if (kind === 'negate') {
      const one = scaled(given, -1, ends);
      if (one) return one;
    }
    const of = kind === 'logarithm' ? away(given) : kind === 'squareRoot' ? signed(given) : given;
    const slack = (): Slack => {
      if (kind === 'squareRoot') return slackOf.squareRoot(of);
      if (kind === 'exponential' || kind === 'powerOfTwo') {
        const [largest, own] = {
          exponential: [LARGEST_EXPONENT, EXPONENTIAL_ERROR] as const,
          powerOfTwo: [LARGEST_POWER_OF_TWO, POWER_OF_TWO_ERROR] as const,
        }[kind];
        if (!(of.high <= largest)) return unknown;
        // What is further below is computed as the power of this, and both are as good as 0.
        return slackOf.exponential({ ...of, low: Math.max(of.low, -largest) }, own);
      }
      return kind === 'logarithm' ? slackOf.logarithm(of, LOGARITHM_ERROR) : of.slack;
    };
    const form = () => (kind === 'negate' ? scaledFormOf(of, -1) : null);
    return node(`${kind} ${of.id}`, { kind, of }, ends, slack, form);
  }

  function power(given: Node, exponent: number, ends: Ends = endsOf.power(given)): Node {
    // A root is NaN below 0 as the power is, and lies a rounding apart from it.
    if (exponent === 0.5) return unary('squareRoot', away(given), ends);
    const whole = Number.isInteger(exponent) && exponent >= 0 && exponent <= 4;
    const of = whole ? given : exponent < 1 ? away(given) : signed(given);
    const own = EXPONENTIAL_ERROR + Math.abs(exponent) * (LOGARITHM_ERROR + ROUNDED * 710);
    const slack = () =>
      !whole && isHeldDown(of, exponent) ? unknown : slackOf.power(of, exponent, whole ? 4 * ROUNDED : own);
    return node(`power ${of.id} ${exponent}`, { kind: 'power', of, exponent }, ends, slack);
  }

  return {
    constant,
    form(base, slack, ends) {
      const operation: Operation = { kind: 'form', base, factor: base.scale };
      return node(`form ${count}`, operation, ends, () => slack);
    },
    system: (step, ends) => node(`system ${step}`, { kind: 'system', step }, ends, () => noSlack),
    entropy: (ends) => node('entropy', { kind: 'entropy' }, ends, () => noSlack),
    sum(step, base, canonical, ends) {
      const rounding = base.scale * roundingOf(base, total, elements);
      const slack = { absolute: canonical.absolute + rounding, relative: canonical.relative + ROUNDED };
      const operation: Operation = { kind: 'form', base, factor: base.scale };
      return node(
        `sum ${step}`,
        operation,
        ends,
        () => slack,
        () => ({ form: base, slack: canonical }),
      );
    },
    binary,
    unary,
    power,
    choose(when, then, otherwise, ends) {
      const key = `choose ${when.left.id} ${when.operator} ${when.right.id} ${then.id} ${otherwise?.id}`;
      const slack = () => (otherwise ? slackOf.either(then.slack, otherwise.slack) : then.slack);
      return node(key, { kind: 'choose', when, then, otherwise }, ends, slack);
    },
  };
}

/** Up to here no power of what is not next to nothing comes near the ends of what the kernel holds powers to, 10^±299. */
const PLAIN_EXPONENT = 16;

/** Whether a power through logarithms, which the kernel holds away from 0 and from infinity, may lie beyond that. */
function isHeldDown(of: Node, exponent: number): boolean {
  const ends = [sizeOf(of), of.least].filter((size) => size > 0 && size < Number.POSITIVE_INFINITY);
  const reach = Math.max(...ends.map((size) => Math.abs(exponent * Math.log10(size))));
  return reach > 290 || (Math.abs(exponent) > PLAIN_EXPONENT && !(of.least > 0));
}

/** Of a lesser or greater of two the one that it always is, where that is known. */
function withoutIdleSide(kind: 'lesser' | 'greater', left: Node, right: Node): Node | null {
  if (left.mayLack || right.mayLack) return null;
  const [lower, upper] = kind === 'lesser' ? [left, right] : [right, left];
  if (lower.high <= upper.low) return left;
  return upper.high <= lower.low ? right : null;
}
