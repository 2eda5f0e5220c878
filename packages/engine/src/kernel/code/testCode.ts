import type { Atom, Preview, Test, Value } from '../comparison/test.ts';
import type { Local, PlainInstruction } from '../emit.ts';
import { formKey } from '../formKey.ts';
import type { Node } from '../node.ts';
import type { Scope } from './scope.ts';

const comparisons = {
  '<': 'f64x2.lt',
  '<=': 'f64x2.le',
  '>': 'f64x2.gt',
  '>=': 'f64x2.ge',
} as const satisfies Record<string, PlainInstruction>;

/** Puts the mask of a test on the stack; what it leaves uncertain is watched. */
export function pushTest(scope: Scope, test: Test): void {
  const { code } = scope;
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
        pushTest(scope, one);
        if (at > 0) code.op(test.kind === 'all' ? 'v128.and' : 'v128.or');
      }
      return;
    case 'atom':
      scope.once(keyOf(test), () => {
        const { preview, ...full } = test;
        if (preview === undefined) pushAtom(scope, full);
        else pushPreviewed(scope, full, preview);
      });
  }
}

/** The value itself is formed only where its preview decides one of two points not. */
function pushPreviewed(scope: Scope, full: Atom, { node, low, high }: Preview): void {
  const { code } = scope;
  const [holds, unsure, width] = [code.local('v128'), code.local('v128'), (high - low) / 2];
  scope.push(node);
  code.splat(low + width).op('f64x2.sub');
  const distance = code.local('v128');
  code.tee(distance).splat(0).op(comparisons[full.operator]).set(holds);
  code.bits(0n).set(unsure);
  code.get(distance).op('f64x2.abs').splat(width).op('f64x2.le', 'v128.any_true').seldom();
  const inside = scope.inner();
  inside.pushTest(full);
  code.set(holds);
  if (inside.pushUncertain()) code.set(unsure);
  code.end();
  scope.guards.add(unsure);
  code.get(holds);
}

function pushAtom(scope: Scope, { value, operator, threshold, guard, unit, size }: Atom): void {
  const { code } = scope;
  pushValue(scope, value);
  if (guard === 0) {
    code.splat(threshold).op(comparisons[operator]);
    return;
  }
  if (threshold !== 0) code.splat(threshold).op('f64x2.sub');
  const distance = code.local('v128');
  code.tee(distance).splat(0).op(comparisons[operator]);
  const mayBeNaN = value.kind === 'node' && value.node.mayLack;
  scope.guards.watch({ distance, guard, unit: unit && localOf(scope, unit), size, mayBeNaN });
}

function pushValue(scope: Scope, value: Value): void {
  if (value.kind === 'form') scope.sources.form(value.form);
  else scope.push(value.node);
}

function localOf({ code, push }: Scope, node: Node): Local {
  const local = code.local('v128');
  push(node);
  code.set(local);
  return local;
}

function keyOf({ value, operator, threshold, guard, unit }: Atom): string {
  const of = value.kind === 'form' ? `form ${formKey(value.form)}` : `node ${value.node.id}`;
  return `${of} ${operator} ${threshold} ${guard} ${unit?.id}`;
}
