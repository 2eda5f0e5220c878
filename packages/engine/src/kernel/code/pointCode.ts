import { loosened } from '../comparison/test.ts';
import { formKey } from '../formKey.ts';
import { type Frame, pushAmount } from './frame.ts';
import { writeRecord } from './recordCode.ts';
import type { ValueCode } from './scope.ts';
import { valueCode } from './valueCode.ts';

/** What is done at a step of a line: its points are tested and counted, and may become a record. */
export function writePoint(frame: Frame): void {
  const { code, task } = frame;
  const values = valuesAt(frame);
  if (task.countsNothing) {
    pushNotRuledOut(frame, values);
    code.op('v128.any_true').seldom();
    beginLate(frame);
    const inside = values.inner();
    writeRecord(frame, inside, testLimits(frame, inside));
    code.end();
    return;
  }
  const unsure = testLimits(frame, values);
  if (task.score) {
    code.get(frame.passes);
    pushReached(frame);
    code.op('v128.and');
    if (unsure) code.get(frame.uncertain).op('v128.or');
  } else if (unsure) code.get(frame.uncertain);
  else return;
  code.op('v128.any_true').seldom();
  beginLate(frame);
  writeRecord(frame, values, unsure);
  code.end();
}

function valuesAt(frame: Frame): ValueCode {
  const { code, task, layout, needs, formByKey } = frame;
  return valueCode(code, {
    form: (form) => formByKey.get(formKey(form))!.push(() => pushAmount(frame)),
    entropy: () => pushEntropy(frame),
    system: (step) => code.i32(0).access('v128.load', layout.constants + 16 * needs.constants.indexOf(step)),
    tests: task.tests,
  });
}

function pushEntropy({ code, layout, amounts, entropies, entropyRow, line, stride }: Frame): void {
  code.get(amounts[line]!).i32(3).op('i32.shl').get(entropyRow).op('i32.add');
  code.access(stride === 2 ? 'v128.load' : 'v128.load64_splat', layout.entropyOfLine);
  if (line > 0) code.get(entropies[line - 1]!).op('f64x2.add');
}

/** Sets and counts what passes and what is uncertain; whether anything may be. */
function testLimits({ code, task, masks, counters, passes, uncertain }: Frame, values: ValueCode): boolean {
  for (const [at, mask] of masks.entries()) {
    values.pushTest(task.limits[at] ?? task.counted[at - task.limits.length]!);
    code.set(mask);
  }
  if (task.limits.length === 0) code.bits(-1n);
  for (const [at] of task.limits.entries()) {
    code.get(masks[at]!);
    if (at > 0) code.op('v128.and');
  }
  code.set(passes);
  counters.count(masks, passes);
  const unsure = values.pushUncertain();
  if (unsure) code.set(uncertain);
  return unsure;
}

/** Whether the scores may reach the cut-off. */
function pushReached(frame: Frame): void {
  const { code, reaches } = frame;
  if (reaches.length === 0) code.bits(-1n);
  for (const [at, reach] of reaches.entries()) {
    reach.push(() => pushAmount(frame));
    code.splat(0).op('f64x2.le');
    if (at > 0) code.op('v128.and');
  }
}

/** Where neither the cut-off nor a limit that is a form rules a point out; what is uncertain is not ruled out. */
function pushNotRuledOut(frame: Frame, values: ValueCode): void {
  pushReached(frame);
  for (const limit of frame.task.limits) {
    const test = loosened(limit);
    if (test.kind === 'always') continue;
    values.pushTest(test);
    frame.code.op('v128.and');
  }
}

function beginLate({ code, late, amounts, line, lateAmount }: Frame): void {
  for (let level = 0; level < line && late.length > 0; level += 1) {
    code.get(amounts[level]!).op('f64.convert_i32_s', 'f64x2.splat').set(lateAmount);
    for (const form of late) form.begin(level, lateAmount);
  }
}
