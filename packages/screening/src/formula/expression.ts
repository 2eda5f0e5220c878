/**
 * The formula of a quantity, as data. One tree yields the value, bounds over a region, the
 * sensitivities, the unit and (in packages/engine) the fast scorers, so that a quantity is
 * stated once. c are mole fractions, c log c is 0 at c = 0, sums run over the elements present.
 *
 * A step that has no value (0/0, the logarithm or the root of a negative number, outside a
 * domain) is NaN inside a computation, spreads as NaN, and leaves as null. A quotient x/0 is
 * ±Infinity inside, so that `lesser(1000, ...)` caps it; an infinite result leaves as null.
 */
export type Expression =
  | { kind: 'constant'; value: number; unit: string }
  | { kind: 'condition'; name: string }
  | { kind: 'linear'; of: ElementTerm }
  | { kind: 'pairs'; of: PairTerm }
  | { kind: 'entropy' }
  | { kind: 'least' | 'greatest'; of: ElementTerm }
  | { kind: 'leastPair' | 'greatestPair'; of: PairTerm }
  | { kind: BinaryKind; left: Expression; right: Expression }
  | { kind: UnaryKind; of: Expression }
  | { kind: 'power'; of: Expression; exponent: number }
  | { kind: 'choose'; when: Comparison; then: Expression; otherwise: Expression | null };

export type BinaryKind = 'add' | 'subtract' | 'multiply' | 'divide' | 'lesser' | 'greater';
export type UnaryKind = 'negate' | 'squareRoot' | 'absolute' | 'exponential' | 'logarithm';

/** `left operator right`; a comparison with a missing side is missing, and so is what it chooses. */
export interface Comparison {
  left: Expression;
  operator: '<' | '<=';
  right: Expression;
}

/** A number for each element, from its data; becomes a coefficient when an expression is bound. */
export type ElementTerm =
  | { kind: 'column'; column: string }
  | { kind: 'share'; symbols: readonly string[] }
  | { kind: 'constant'; value: number; unit: string }
  | { kind: 'add' | 'multiply' | 'divide'; left: ElementTerm; right: ElementTerm }
  | { kind: 'power'; of: ElementTerm; exponent: number };

/** A number for each pair of different elements; symmetric. */
export type PairTerm =
  | { kind: 'pairColumn'; column: string }
  | { kind: 'squaredDifference' | 'sum' | 'product'; of: ElementTerm }
  | { kind: 'constant'; value: number; unit: string }
  | { kind: 'add' | 'multiply'; left: PairTerm; right: PairTerm };

/** A number where an expression is meant, of the unit given; a plain number has no unit. */
export type Operand = Expression | number;

function expressionOf(operand: Operand): Expression {
  return typeof operand === 'number' ? constant(operand) : operand;
}

/** A fixed number with its unit ('' is none). */
export function constant(value: number, unit = ''): Expression & ElementTerm & PairTerm {
  return { kind: 'constant', value, unit };
}

/** A condition of the search (K, 1/s, µm), by name: see conditions.ts. */
export function condition(name: string): Expression {
  return { kind: 'condition', name };
}

/** The value of an element column of packages/elements. */
export function column(id: string): ElementTerm {
  return { kind: 'column', column: id };
}

/** 1 for the elements named, 0 for all others: a linear sum of it is their common mole fraction. */
export function share(...symbols: string[]): ElementTerm {
  return { kind: 'share', symbols };
}

/** Arithmetic on what single elements contribute. */
export const elementSum = (left: ElementTerm, right: ElementTerm): ElementTerm => ({
  kind: 'add',
  left,
  right,
});
export const elementProduct = (left: ElementTerm, right: ElementTerm): ElementTerm => ({
  kind: 'multiply',
  left,
  right,
});
export const elementQuotient = (left: ElementTerm, right: ElementTerm): ElementTerm => ({
  kind: 'divide',
  left,
  right,
});
export const elementPower = (of: ElementTerm, exponent: number): ElementTerm => ({
  kind: 'power',
  of,
  exponent,
});

/** The value of a pair column of packages/elements. */
export function pairColumn(id: string): PairTerm {
  return { kind: 'pairColumn', column: id };
}

/** (aᵢ − aⱼ)², aᵢ + aⱼ and aᵢ aⱼ of an element term, and sum and product of two pair terms. */
export const squaredDifference = (of: ElementTerm): PairTerm => ({ kind: 'squaredDifference', of });
export const sumOfTwo = (of: ElementTerm): PairTerm => ({ kind: 'sum', of });
export const productOfTwo = (of: ElementTerm): PairTerm => ({ kind: 'product', of });
export const pairSum = (left: PairTerm, right: PairTerm): PairTerm => ({ kind: 'add', left, right });
export const pairProduct = (left: PairTerm, right: PairTerm): PairTerm => ({ kind: 'multiply', left, right });

/** Σ cᵢ aᵢ, the mean of an element term over the atoms. */
export function linear(of: ElementTerm | string): Expression {
  return { kind: 'linear', of: typeof of === 'string' ? column(of) : of };
}

/** Σᵢ<ⱼ cᵢ cⱼ bᵢⱼ. */
export function pairs(of: PairTerm): Expression {
  return { kind: 'pairs', of };
}

/**
 * The variance Σ cᵢ (aᵢ − ā)², formed as Σᵢ<ⱼ cᵢcⱼ(aᵢ − aⱼ)²: equal by algebra, but it does
 * not cancel, and equal values give exactly 0.
 */
export function variance(of: ElementTerm | string): Expression {
  return pairs(squaredDifference(typeof of === 'string' ? column(of) : of));
}

/** −Σ cᵢ ln cᵢ, at least 0. */
export function entropy(): Expression {
  return { kind: 'entropy' };
}

/** Extremes over the elements, or the pairs of elements, that are present. A system without a pair has no value of the latter. */
export const least = (of: ElementTerm): Expression => ({ kind: 'least', of });
export const greatest = (of: ElementTerm): Expression => ({ kind: 'greatest', of });
export const leastPair = (of: PairTerm): Expression => ({ kind: 'leastPair', of });
export const greatestPair = (of: PairTerm): Expression => ({ kind: 'greatestPair', of });

const binary =
  (kind: BinaryKind) =>
  (left: Operand, right: Operand): Expression => ({
    kind,
    left: expressionOf(left),
    right: expressionOf(right),
  });

export const plus = binary('add');
export const minus = binary('subtract');
export const times = binary('multiply');
export const divide = binary('divide');
export const lesser = binary('lesser');
export const greater = binary('greater');

const unary =
  (kind: UnaryKind) =>
  (of: Operand): Expression => ({ kind, of: expressionOf(of) });

export const negate = unary('negate');
export const squareRoot = unary('squareRoot');
export const absolute = unary('absolute');
export const exponential = unary('exponential');
export const logarithm = unary('logarithm');

/** x to a fixed exponent; the base must not be negative unless the exponent is whole. */
export function power(of: Operand, exponent: number): Expression {
  return { kind: 'power', of: expressionOf(of), exponent };
}

export function below(left: Operand, right: Operand): Comparison {
  return { left: expressionOf(left), operator: '<', right: expressionOf(right) };
}

export function atMost(left: Operand, right: Operand): Comparison {
  return { left: expressionOf(left), operator: '<=', right: expressionOf(right) };
}

/** `then` where the comparison holds, else `otherwise`. */
export function choose(when: Comparison, then: Operand, otherwise: Operand): Expression {
  return choice(when, expressionOf(then), expressionOf(otherwise));
}

/** A domain: `of` where the comparison holds, no value elsewhere. */
export function within(when: Comparison, of: Operand): Expression {
  return choice(when, expressionOf(of), null);
}

/** As `choose`; an `otherwise` of null is no value. */
export function choice(when: Comparison, then: Expression, otherwise: Expression | null): Expression {
  return { kind: 'choose', when, then, otherwise };
}
