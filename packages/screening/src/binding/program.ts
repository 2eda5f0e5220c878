import type { BinaryKind, UnaryKind } from '../formula/expression.ts';

/**
 * One step of a bound program. `left`, `right`, `of`, `then` ... are numbers of earlier steps.
 *
 * Sums are stated for amounts x of any scale with total X = Σ x, so that a grid point's integer
 * parts and a typed composition take one path:
 * - linear: Σ aᵢ xᵢ / (divisor · X)
 * - pairs: Σᵢ<ⱼ bᵢⱼ xᵢ xⱼ / (divisor · X²)
 * Where the data are short decimals, coefficients are scaled to integers by `divisor` (a power of
 * ten), so that the sum over integer parts is exact: points that are equal by algebra are equal
 * digit for digit, and a point on a limit is on it. Elsewhere `divisor` is 1 and `decimal` false.
 */
export type Step =
  | { kind: 'constant'; value: number }
  | { kind: 'linear'; coefficients: Float64Array; divisor: number; decimal: boolean }
  /** coefficients[i * size + j], symmetric, zero diagonal */
  | { kind: 'pairs'; coefficients: Float64Array; divisor: number; decimal: boolean }
  | { kind: 'entropy' }
  | { kind: 'least' | 'greatest'; coefficients: Float64Array }
  | { kind: 'leastPair' | 'greatestPair'; coefficients: Float64Array }
  | { kind: BinaryKind; left: number; right: number }
  | { kind: UnaryKind; of: number }
  | { kind: 'power'; of: number; exponent: number }
  | {
      kind: 'choose';
      left: number;
      operator: '<' | '<=';
      right: number;
      then: number;
      /** null: no value where the comparison fails */
      otherwise: number | null;
    };

/**
 * Expressions bound to the data of a pool: equal sub-expressions are one step, and every step
 * stands after those that it uses. `outputs[k]` is the step that holds expression k.
 */
export interface Program {
  symbols: readonly string[];
  steps: readonly Step[];
  outputs: readonly number[];
}
