import { leaveLevel } from './conditionCode.ts';
import type { Frame } from './frame.ts';
import { writeLine } from './lineCode.ts';
import { pushRange } from './rangeCode.ts';

/** Goes through all amounts of a level and those behind it, which the amounts before it leave. */
export function writeLevel(frame: Frame, level: number): void {
  if (level === frame.line) {
    writeLine(frame);
    return;
  }
  const { code, forms, entropies } = frame;
  const [amount, end] = [frame.amounts[level]!, frame.ends[level]!];
  code.block('block');
  pushRange(frame, level);
  code.get(end).op('i32.gt_s').branch(0, 'if');
  code.get(amount).op('f64.convert_i32_s', 'f64x2.splat').set(frame.amount);
  for (const form of forms) form.begin(level, frame.amount);
  code.block('loop');
  if (frame.needs.entropy) {
    code.get(amount).i32(3).op('i32.shl').access('v128.load64_splat', frame.layout.entropy);
    if (level > 0) code.get(entropies[level - 1]!).op('f64x2.add');
    code.set(entropies[level]!);
  }
  code.block('block');
  leaveLevel(frame, level);
  writeLevel(frame, level + 1);
  code.end();
  for (const form of forms) form.step(level);
  code.get(amount).i32(1).op('i32.add').tee(amount).get(end).op('i32.le_s').branch(0, 'if');
  code.end().end();
}
