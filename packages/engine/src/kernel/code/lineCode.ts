import type { Local } from '../emit.ts';
import { cutLine } from './conditionCode.ts';
import { type Frame, pushAmount } from './frame.ts';
import { writePoint } from './pointCode.ts';
import { pushRange } from './rangeCode.ts';

/** Goes along a line, and counts its points on. */
export function writeLine(frame: Frame): void {
  const { code, layout, line, stride, forms, index } = frame;
  const [amount, end] = [frame.amounts[line]!, frame.ends[line]!];
  const [first] = [code.local('i32')];
  code.block('block');
  pushRange(frame, line);
  code.tee(first).get(end).op('i32.gt_s').branch(0, 'if');
  code.get(index).get(first).op('i32.sub').set(frame.lineStart);
  pushAmount(frame);
  code.set(frame.amount);
  if (frame.needs.entropy) {
    code.get(frame.rests[line]!).i32(layout.bytesPerRow).op('i32.mul').set(frame.entropyRow);
  }
  const [all] = [code.local('i32')];
  code.get(end).set(all);
  code.block('block');
  cutLine(frame, amount, end);
  for (const form of forms) form.beginLine(frame.amount);
  code.block('loop');
  writePoint(frame);
  for (const form of forms) form.stepLine();
  code.get(amount).i32(stride).op('i32.add').tee(amount).get(end).op('i32.le_s').branch(0, 'if');
  code.end();
  if (stride === 2 && !frame.counters.isEmpty) forgetTail(frame, amount, end);
  code.end();
  code.get(index).get(all).op('i32.add').get(first).op('i32.sub').i32(1).op('i32.add').set(index);
  code.end();
}

/** On a line of an odd number of points the second lane of the last step is no point. Without a branch: none could be foreseen. */
function forgetTail({ code, counters }: Frame, amount: Local, end: Local): void {
  const tail = code.local('v128');
  code.get(amount).i32(1).op('i32.sub', 'f64.convert_i32_s', 'f64x2.splat');
  code.get(end).op('f64.convert_i32_s', 'f64x2.splat', 'f64x2.gt');
  code.lanes(0n, -1n).op('v128.and').set(tail);
  counters.uncount(tail);
}
