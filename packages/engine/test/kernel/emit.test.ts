import { expect, test } from 'vitest';
import wabt from 'wabt';
import { prepare } from '../../src/index.ts';
import { kernelCode } from '../../src/kernel/code/kernelCode.ts';
import { functionCode, moduleOf } from '../../src/kernel/emit.ts';
import { kernelTask } from '../../src/kernel/kernelTask.ts';
import { planOf } from '../fixtures/plans.ts';
import { specificationWith } from '../fixtures/specifications.ts';

// wabt, the WebAssembly Binary Toolkit, reads what the emitter writes: an opinion from outside.
const { readWasm } = await wabt();

/** The module in text format, one instruction a line; throws for a module that is not valid. */
function disassembled(bytes: Uint8Array): string[] {
  const module = readWasm(bytes, { readDebugNames: false, simd: true });
  module.validate();
  const text = module.toText({ foldExprs: false, inlineExport: false });
  module.destroy();
  return text.split('\n').map((line) => line.trim());
}

test('a number of a vector becomes an integer by the instructions that their names say', () => {
  const code = functionCode(256);
  const [i, v] = [code.local('i32'), code.local('v128')];
  code.get(v).op('i32x4.trunc_sat_f64x2_s_zero', 'i32x4.extract_lane 0').set(i);
  const lines = disassembled(moduleOf(code).bytes);
  const at = lines.indexOf('local.get 1');
  expect(lines.slice(at, at + 4)).toEqual([
    'local.get 1',
    'i32x4.trunc_sat_f64x2_s_zero',
    'i32x4.extract_lane 0',
    expect.stringMatching(/^local.set 0/),
  ]);
});

test('every instruction is the one that its name says', () => {
  const code = functionCode(256);
  const [i, v, w] = [code.local('i32'), code.local('v128'), code.local('v128')];
  code.block('block').block('loop');
  code.i32(-1234567).set(i).get(i).i32(64).op('i32.add', 'i32.eqz').branch(1, 'if');
  code.get(i).access('v128.load', 300_000).splat(2.5).op('f64x2.mul').tee(v);
  code.splat(2.5).op('f64x2.pmin').get(w).op('f64x2.le', 'v128.not', 'v128.any_true').seldom();
  code.i32(0).get(v).op('f64x2.abs', 'f64x2.sqrt').bits(-1n).op('v128.andnot').access('v128.store', 16);
  code.otherwise().i32(0).get(v).op('i64x2.bitmask').access('i32.store', 8).end();
  code.branch(0).end().end();
  const { bytes, numbers } = moduleOf(code);
  expect(numbers).toEqual([2.5]);
  const lines = disassembled(bytes);
  const body = lines.slice(lines.findIndex((line) => line.startsWith('(local')));
  expect(body.slice(0, 42).map((line) => line.replace(/ *;;.*/, ''))).toEqual([
    '(local i32 v128 v128 v128)',
    'i32.const 0',
    'v128.load offset=256 align=8',
    'local.set 3',
    'block',
    'loop',
    'i32.const -1234567',
    'local.set 0',
    'local.get 0',
    'i32.const 64',
    'i32.add',
    'i32.eqz',
    'br_if 1 (;@1;)',
    'local.get 0',
    'v128.load offset=300000 align=8',
    'local.get 3',
    'f64x2.mul',
    'local.tee 1',
    'local.get 3',
    'f64x2.pmin',
    'local.get 2',
    'f64x2.le',
    'v128.not',
    'v128.any_true',
    'if',
    'i32.const 0',
    'local.get 1',
    'f64x2.abs',
    'f64x2.sqrt',
    'v128.const i32x4 0xffffffff 0xffffffff 0xffffffff 0xffffffff',
    'v128.andnot',
    'v128.store offset=16 align=8',
    'else',
    'i32.const 0',
    'local.get 1',
    'i64x2.bitmask',
    'i32.store offset=8',
    'end',
    'br 0 (;@2;)',
    'end',
    'end)',
    '(export "sweep" (func 0)))',
  ]);
});

test.each(['systems', 'line'] as const)(
  'the kernel of a search with lanes of %s is a valid module',
  (lanes) => {
    const limits = [
      { quantity: 'sizeMismatch', max: 6.6 },
      { quantity: 'singlePhaseEstimate', min: 0.4 },
      { quantity: 'yieldStrengthBcc', min: 300 },
      { quantity: 'gamma', max: 1.2 },
    ];
    const rank = [
      { quantity: 'density', prefer: 'low' as const, from: 2, to: 12, shape: 0.5 },
      { quantity: 'omega', prefer: 'high' as const, from: 0, to: 5 },
    ];
    const task = kernelTask(prepare(planOf(specificationWith({ limits, rank }))));
    if (task === null) throw new Error('A kernel can be made for this search.');
    for (const elements of [2, 3, 5, 8]) {
      const { bytes } = kernelCode(task, elements, lanes);
      expect(disassembled(bytes).length).toBeGreaterThan(500);
    }
  },
);

test('generation is deterministic: equal searches have equal modules', () => {
  const bytes = [0, 1].map(() => {
    const limits = [{ quantity: 'omega', min: 1.1 }];
    const task = kernelTask(prepare(planOf(specificationWith({ limits }))));
    return kernelCode(task!, 4, 'systems').bytes;
  });
  expect(bytes[0]).toEqual(bytes[1]);
});
