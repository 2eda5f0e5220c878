import { emitExponential, emitLogarithm, LARGEST_EXPONENT } from '../approximate.ts';
import type { Node } from '../node.ts';
import { Unprovable } from '../unprovable.ts';
import type { Scope } from './scope.ts';

/** Puts ln of a node on the stack: NaN below 0, −∞ at 0. */
export function pushLogarithm(scope: Scope, of: Node): void {
  scope.push(of);
  emitLogarithm(scope.code);
  pushLimits(scope, of, null, Number.POSITIVE_INFINITY);
  pushFromZero(scope, of, Number.NEGATIVE_INFINITY);
}

/**
 * Puts a power of a node on the stack.
 * @throws Unprovable for whole powers beyond 4 and below 0 of what may be negative: through logarithms they have no value
 */
export function pushPower(scope: Scope, of: Node, exponent: number): void {
  const { code } = scope;
  if (Number.isInteger(exponent) && exponent >= 0 && exponent <= 4) {
    pushProduct(scope, of, exponent);
    return;
  }
  if (Number.isInteger(exponent) && of.low < 0) throw new Unprovable();
  scope.push(of);
  emitLogarithm(code);
  code.splat(exponent).op('f64x2.mul');
  code.splat(-LARGEST_EXPONENT).op('f64x2.pmax').splat(LARGEST_EXPONENT).op('f64x2.pmin');
  emitExponential(code);
  const [atZero, atGreatest] = exponent > 0 ? [0, Number.POSITIVE_INFINITY] : [Number.POSITIVE_INFINITY, 0];
  pushLimits(scope, of, null, atGreatest);
  pushFromZero(scope, of, atZero);
}

/** So many factors; of none 1, but NaN of NaN. */
function pushProduct({ code, push }: Scope, of: Node, factors: number): void {
  push(of);
  const base = code.local('v128');
  code.set(base);
  if (factors === 0) code.splat(1).splat(Number.NaN).get(base).get(base).op('f64x2.ge', 'v128.bitselect');
  for (let factor = 0; factor < factors; factor += 1) {
    code.get(base);
    if (factor > 0) code.op('f64x2.mul');
  }
}

/** Replaces the value on the stack by what it is where another is −∞, ∞ or NaN; the instructions before know finite ones alone. */
export function pushLimits(
  { code, push }: Scope,
  of: Node,
  atLeast: number | null,
  atGreatest: number,
): void {
  if (!of.mayLack) return;
  if (atLeast !== null) {
    code.splat(atLeast);
    push(of);
    code.splat(Number.NEGATIVE_INFINITY).op('f64x2.gt', 'v128.bitselect');
  }
  code.splat(atGreatest);
  push(of);
  code.splat(Number.POSITIVE_INFINITY).op('f64x2.lt', 'v128.bitselect').splat(Number.NaN);
  push(of);
  push(of);
  code.op('f64x2.ge', 'v128.bitselect');
}

/** Replaces the value on the stack by what it is where another is 0, and by NaN where that is less or NaN. */
function pushFromZero({ code, push }: Scope, of: Node, atZero: number): void {
  if (of.low > 0 && of.least > 0 && !of.mayLack) return;
  code.splat(atZero);
  push(of);
  code.splat(0).op('f64x2.gt', 'v128.bitselect').splat(Number.NaN);
  push(of);
  code.splat(0).op('f64x2.ge', 'v128.bitselect');
}
