import {
  emitExponential,
  emitLogarithm,
  emitPowerOfTwo,
  LARGEST_EXPONENT,
  LARGEST_POWER_OF_TWO,
} from './approximate.ts';
import type { Atom, Test, Value } from './comparison/test.ts';
import type { Tests } from './comparison/testsOf.ts';
import type { Code, Local, PlainInstruction } from './emit.ts';
import type { Form } from './form.ts';
import type { Node } from './node.ts';
import { sizeOf } from './slack.ts';

/** Where the code of values finds what varies along the grid. */
export interface Sources {
  /** Puts P of a form on the stack. */
  form(form: Form): void;
  entropy(): void;
  system(step: number): void;
  tests: Tests;
}

/** Code of values and tests at one point; each value is formed once within a scope. */
export interface ValueCode {
  /** Puts the value of a node on the stack. */
  push(node: Node): void;
  /** Puts the mask of a test on the stack. */
  pushTest(test: Test): void;
  /** Puts the mask of points that some test so far leaves uncertain on the stack; false where there is none. */
  pushUncertain(): boolean;
  /** Code that may not be reached: it sees what was formed before it, and what it forms stays inside. */
  inner(): ValueCode;
}

/** Something further than `guard` (units) from 0 is certain; `size` is the greatest that it can be. */
interface Guarded {
  distance: Local;
  guard: number;
  unit: Local | null;
  size: number;
  mayBeNaN: boolean;
}

/** Thrown where the error of a value that decides something has no bound: another scorer must take the search. */
export class Unprovable extends Error {}

const comparisons = {
  '<': 'f64x2.lt',
  '<=': 'f64x2.le',
  '>': 'f64x2.gt',
  '>=': 'f64x2.ge',
} as const satisfies Record<string, PlainInstruction>;

/** Distances are multiplied and compared at once in groups of so many: more would leave too many points uncertain. */
const MOST_IN_A_PRODUCT = 4;
/** A guard wider than this share of the size is compared by itself. */
const NARROW = 1e-9;

export function valueCode(code: Code, sources: Sources, outer = new Map<string, Local>()): ValueCode {
  const formed = new Map(outer);
  const guarded: Guarded[] = [];
  /** Masks of what inner code was not sure of. */
  const unsures: Local[] = [];

  /** @throws Unprovable where nothing is known of how far a value may be off */
  function watch(one: Guarded): void {
    if (!(one.guard < Number.MAX_VALUE)) throw new Unprovable();
    guarded.push(one);
  }

  /** Puts something on the stack, from where it was kept if it was formed before. */
  function once(key: string, form: () => void): void {
    const known = formed.get(key);
    if (known !== undefined) {
      code.get(known);
      return;
    }
    form();
    const local = code.local('v128');
    code.tee(local);
    formed.set(key, local);
  }

  function push(node: Node): void {
    const { operation } = node;
    if (operation.kind === 'constant') code.splat(operation.value);
    else once(`node ${node.id}`, () => pushOperation(node));
  }

  function pushAtLeast(node: Node, least: number): void {
    push(node);
    if (node.low < least) code.splat(least).op('f64x2.pmax');
  }

  function localOf(node: Node): Local {
    const local = code.local('v128');
    push(node);
    code.set(local);
    return local;
  }

  function pushOperation(node: Node): void {
    const { operation } = node;
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
        pushAtLeast(operation.of, -LARGEST_EXPONENT);
        emitExponential(code);
        pushLimits(operation.of, 0, Number.POSITIVE_INFINITY);
        return;
      case 'powerOfTwo':
        pushAtLeast(operation.of, -LARGEST_POWER_OF_TWO);
        emitPowerOfTwo(code);
        return;
      case 'logarithm':
        pushLogarithm(operation.of);
        return;
      case 'power':
        pushPower(operation.of, operation.exponent);
        return;
      case 'choose':
        pushChoice(operation);
        return;
      case 'away': {
        push(operation.of);
        const { guard, least } = operation;
        push(guard);
        const distance = code.local('v128');
        code.set(distance);
        watch({ distance, guard: least, unit: null, size: 1.001 * sizeOf(guard), mayBeNaN: guard.mayLack });
        return;
      }
      case 'lesser':
      case 'greater':
        pushExtreme(operation.kind, operation.left, operation.right);
        return;
      default:
        pushArithmetic(operation.kind, operation.left, operation.right);
    }
  }

  function pushArithmetic(kind: 'add' | 'subtract' | 'multiply' | 'divide', left: Node, right: Node): void {
    push(left);
    push(right);
    // x/−0 is x/0.
    if (kind === 'divide' && right.least === 0) code.splat(0).op('f64x2.add');
    code.op(
      ({ add: 'f64x2.add', subtract: 'f64x2.sub', multiply: 'f64x2.mul', divide: 'f64x2.div' } as const)[
        kind
      ],
    );
  }

  /** The instructions pmin and pmax are fast and give the left side where a side is NaN. */
  function pushExtreme(kind: 'lesser' | 'greater', left: Node, right: Node): void {
    const [first, second] = right.mayLack ? [right, left] : [left, right];
    push(first);
    push(second);
    const both = first.mayLack && second.mayLack;
    if (kind === 'lesser') code.op(both ? 'f64x2.min' : 'f64x2.pmin');
    else code.op(both ? 'f64x2.max' : 'f64x2.pmax');
  }

  /** Replaces the value on the stack by what it is where another is −∞, ∞ or NaN; the instructions before know finite ones alone. */
  function pushLimits(of: Node, atLeast: number | null, atGreatest: number): void {
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

  /** NaN below 0, −∞ at 0. */
  function pushLogarithm(of: Node): void {
    push(of);
    emitLogarithm(code);
    pushLimits(of, null, Number.POSITIVE_INFINITY);
    pushFromZero(of, Number.NEGATIVE_INFINITY);
  }

  /** Replaces the value on the stack by what it is where another is 0, and by NaN where that is less or NaN. */
  function pushFromZero(of: Node, atZero: number): void {
    if (of.low > 0 && of.least > 0 && !of.mayLack) return;
    code.splat(atZero);
    push(of);
    code.splat(0).op('f64x2.gt', 'v128.bitselect').splat(Number.NaN);
    push(of);
    code.splat(0).op('f64x2.ge', 'v128.bitselect');
  }

  /** @throws Unprovable for whole powers beyond 4 and below 0 of what may be negative: through logarithms they have no value */
  function pushPower(of: Node, exponent: number): void {
    if (Number.isInteger(exponent) && exponent >= 0 && exponent <= 4) {
      push(of);
      const base = code.local('v128');
      code.set(base);
      if (exponent === 0)
        code.splat(1).splat(Number.NaN).get(base).get(base).op('f64x2.ge', 'v128.bitselect');
      for (let factor = 0; factor < exponent; factor += 1) {
        code.get(base);
        if (factor > 0) code.op('f64x2.mul');
      }
      return;
    }
    if (Number.isInteger(exponent) && of.low < 0) throw new Unprovable();
    push(of);
    emitLogarithm(code);
    code.splat(exponent).op('f64x2.mul');
    code.splat(-LARGEST_EXPONENT).op('f64x2.pmax').splat(LARGEST_EXPONENT).op('f64x2.pmin');
    emitExponential(code);
    const [atZero, atGreatest] = exponent > 0 ? [0, Number.POSITIVE_INFINITY] : [Number.POSITIVE_INFINITY, 0];
    pushLimits(of, null, atGreatest);
    pushFromZero(of, atZero);
  }

  function pushChoice({ when, then, otherwise }: Extract<Node['operation'], { kind: 'choose' }>): void {
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

  function pushTest(test: Test): void {
    switch (test.kind) {
      case 'always':
        code.bits(-1n);
        return;
      case 'never':
        code.bits(0n);
        return;
      case 'all':
      case 'any':
        for (const [at, one] of test.tests.entries()) {
          pushTest(one);
          if (at > 0) code.op(test.kind === 'all' ? 'v128.and' : 'v128.or');
        }
        return;
      case 'atom':
        once(keyOf(test), () => pushAtom(test));
    }
  }

  function pushAtom(atom: Atom): void {
    if (atom.preview === undefined) {
      pushFullAtom(atom);
      return;
    }
    const { node, low, high } = atom.preview;
    const [holds, unsure, width] = [code.local('v128'), code.local('v128'), (high - low) / 2];
    push(node);
    code.splat(low + width).op('f64x2.sub');
    const distance = code.local('v128');
    code.tee(distance).splat(0).op(comparisons[atom.operator]).set(holds);
    code.bits(0n).set(unsure);
    code.get(distance).op('f64x2.abs').splat(width).op('f64x2.le', 'v128.any_true').seldom();
    const inside = inner();
    const { preview, ...full } = atom;
    inside.pushTest(full);
    code.set(holds);
    if (inside.pushUncertain()) code.set(unsure);
    code.end();
    unsures.push(unsure);
    code.get(holds);
  }

  function pushFullAtom({ value, operator, threshold, guard, unit, size }: Atom): void {
    pushValue(value);
    if (guard === 0) {
      code.splat(threshold).op(comparisons[operator]);
      return;
    }
    if (threshold !== 0) code.splat(threshold).op('f64x2.sub');
    const distance = code.local('v128');
    code.tee(distance).splat(0).op(comparisons[operator]);
    const mayBeNaN = value.kind === 'node' && value.node.mayLack;
    watch({ distance, guard, unit: unit && localOf(unit), size, mayBeNaN });
  }

  function pushValue(value: Value): void {
    if (value.kind === 'form') sources.form(value.form);
    else push(value.node);
  }

  function pushUncertain(): boolean {
    const narrow = guarded.filter(
      ({ guard, unit, size, mayBeNaN }) => !mayBeNaN && unit === null && guard <= NARROW * size,
    );
    const others = guarded.filter((one) => !narrow.includes(one));
    let masks = 0;
    const join = (): void => {
      masks += 1;
      if (masks > 1) code.op('v128.or');
    };
    for (let at = 0; at < narrow.length; at += MOST_IN_A_PRODUCT) {
      pushProductMask(narrow.slice(at, at + MOST_IN_A_PRODUCT));
      join();
    }
    for (const { distance, guard, unit, mayBeNaN } of others) {
      code.get(distance).op('f64x2.abs').splat(guard);
      if (unit !== null) code.get(unit).op('f64x2.mul');
      // What is NaN is certain; elsewhere nothing is, should the value be NaN all the same.
      if (mayBeNaN) code.op('f64x2.le');
      else code.op('f64x2.gt', 'v128.not');
      join();
    }
    for (const unsure of unsures) {
      code.get(unsure);
      join();
    }
    return masks > 0;
  }

  /** Where one distance lies within its guard, the product lies within that times the sizes of the others. */
  function pushProductMask(group: readonly Guarded[]): void {
    for (const [at, { distance }] of group.entries()) {
      code.get(distance);
      if (at > 0) code.op('f64x2.mul');
    }
    const sizes = group.reduce((product, { size }) => product * size, 1);
    const widest = Math.max(...group.map(({ guard, size }) => guard / size));
    code.op('f64x2.abs').splat(1.000001 * widest * sizes);
    // No product is infinite or NaN, unless the sizes leave that open.
    if (sizes < 1e300) code.op('f64x2.le');
    else code.op('f64x2.gt', 'v128.not');
  }

  function inner(): ValueCode {
    return valueCode(code, sources, formed);
  }

  return {
    push,
    pushTest,
    pushUncertain,
    inner,
  };
}

const numbers = new WeakMap<object, number>();
let objects = 0;

function numberOf(one: object): number {
  let number = numbers.get(one);
  if (number === undefined) {
    objects += 1;
    number = objects;
    numbers.set(one, number);
  }
  return number;
}

/** Equal keys: the same P. */
export function formKey({ constant, linear, quadratic }: Form): string {
  return `${constant} ${numberOf(linear)} ${quadratic && numberOf(quadratic)}`;
}

function keyOf({ value, operator, threshold, guard, unit }: Atom): string {
  const of = value.kind === 'form' ? `form ${formKey(value.form)}` : `node ${value.node.id}`;
  return `${of} ${operator} ${threshold} ${guard} ${unit?.id}`;
}
