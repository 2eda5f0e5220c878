import { emitExponential, emitPowerOfTwo, LARGEST_EXPONENT, LARGEST_POWER_OF_TWO } from '../approximate.ts';
import type { Node } from '../node.ts';
import { sizeOf } from '../slack.ts';
import { pushLimits, pushLogarithm, pushPower } from './powerCode.ts';
import type { Scope } from './scope.ts';

type Operation<Kind extends Node['operation']['kind']> = Extract<Node['operation'], { kind: Kind }>;

/** Puts on the stack what a node computes from others. */
export function pushOperation(scope: Scope, { operation }: Node): void {
  const { code, sources, push } = scope;
  switch (operation.kind) {
    case 'constant':
      code.splat(operation.value);
      return;
    case 'system':
      sources.system(operation.step);
      return;
    case 'entropy':
      sources.entropy();
      return;
    case 'form':
      sources.form(operation.base);
      if (operation.factor !== 1) code.splat(operation.factor).op('f64x2.mul');
      return;
    case 'negate':
      push(operation.of);
      code.op('f64x2.neg');
      return;
    case 'absolute':
      push(operation.of);
      code.op('f64x2.abs');
      return;
    case 'squareRoot':
      push(operation.of);
      code.op('f64x2.sqrt');
      return;
    case 'exponential':
      pushAtLeast(scope, operation.of, -LARGEST_EXPONENT);
      emitExponential(code);
      pushLimits(scope, operation.of, 0, Number.POSITIVE_INFINITY);
      return;
    case 'powerOfTwo':
      pushAtLeast(scope, operation.of, -LARGEST_POWER_OF_TWO);
      emitPowerOfTwo(code);
      return;
    case 'logarithm':
      pushLogarithm(scope, operation.of);
      return;
    case 'power':
      pushPower(scope, operation.of, operation.exponent);
      return;
    case 'choose':
      pushChoice(scope, operation);
      return;
    case 'away':
      pushAway(scope, operation);
      return;
    case 'lesser':
    case 'greater':
      pushExtreme(scope, operation.kind, operation.left, operation.right);
      return;
    default:
      pushArithmetic(scope, operation.kind, operation.left, operation.right);
  }
}

function pushAtLeast({ code, push }: Scope, node: Node, least: number): void {
  push(node);
  if (node.low < least) code.splat(least).op('f64x2.pmax');
}

function pushAway({ code, push, guards }: Scope, { of, guard, least }: Operation<'away'>): void {
  push(of);
  push(guard);
  const distance = code.local('v128');
  code.set(distance);
  guards.watch({ distance, guard: least, unit: null, size: 1.001 * sizeOf(guard), mayBeNaN: guard.mayLack });
}

const arithmetic = {
  add: 'f64x2.add',
  subtract: 'f64x2.sub',
  multiply: 'f64x2.mul',
  divide: 'f64x2.div',
} as const;

function pushArithmetic({ code, push }: Scope, kind: keyof typeof arithmetic, left: Node, right: Node): void {
  push(left);
  push(right);
  // x/−0 is x/0.
  if (kind === 'divide' && right.least === 0) code.splat(0).op('f64x2.add');
  code.op(arithmetic[kind]);
}

/** The instructions pmin and pmax are fast and give the left side where a side is NaN. */
function pushExtreme({ code, push }: Scope, kind: 'lesser' | 'greater', left: Node, right: Node): void {
  const [first, second] = right.mayLack ? [right, left] : [left, right];
  push(first);
  push(second);
  const both = first.mayLack && second.mayLack;
  if (kind === 'lesser') code.op(both ? 'f64x2.min' : 'f64x2.pmin');
  else code.op(both ? 'f64x2.max' : 'f64x2.pmax');
}

function pushChoice(
  { code, push, pushTest, sources }: Scope,
  { when, then, otherwise }: Operation<'choose'>,
): void {
  push(then);
  if (otherwise === null) code.splat(Number.NaN);
  else push(otherwise);
  if (otherwise !== null && (when.left.mayLack || when.right.mayLack)) {
    code.splat(Number.NaN);
    pushTest(sources.tests.failsToHold(when));
    code.op('v128.bitselect');
  }
  pushTest(sources.tests.holds(when));
  code.op('v128.bitselect');
}
