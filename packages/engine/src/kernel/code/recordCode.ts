import type { Local } from '../emit.ts';
import type { Node } from '../node.ts';
import type { Frame } from './frame.ts';
import type { ValueCode } from './scope.ts';
import { comparedIn } from './task.ts';

/** Bits of a record: two of points that the canonical evaluator must decide, then two of points that may be kept. */
export const candidateShift = 2;

/** Of two points some may be kept or are uncertain: if they really do, they become a record. */
export function writeRecord(frame: Frame, values: ValueCode, unsure: boolean): void {
  const { code, task } = frame;
  const [unknown, candidates, bits] = [code.local('v128'), code.local('v128'), code.local('i32')];
  pushValidLanes(frame);
  const valid = code.local('v128');
  code.set(valid);
  if (unsure) {
    code.get(frame.uncertain).get(valid).op('v128.and').tee(unknown).op('v128.any_true').block('if');
    frame.counters.uncount(unknown);
    code.end();
  }
  const compared = comparedIn(task);
  if (compared) {
    pushReachesCutOff(frame, values.inner(), compared);
    code.get(frame.passes).op('v128.and').get(valid).op('v128.and');
    if (unsure) code.get(unknown).op('v128.andnot');
    code.set(candidates);
    code.get(candidates).op('i64x2.bitmask').i32(candidateShift).op('i32.shl');
  } else {
    code.i32(0);
  }
  if (unsure) code.get(unknown).op('i64x2.bitmask', 'i32.or');
  code.tee(bits).block('if');
  storeRecord(frame, bits);
  code.end();
}

/** Beyond the end of a line there is no second point. */
function pushValidLanes({ code, amounts, ends, line, stride }: Frame): void {
  code.bits(-1n);
  if (stride === 2) code.lanes(-1n, 0n).get(amounts[line]!).get(ends[line]!).op('i32.lt_s', 'select');
}

function pushReachesCutOff({ code, layout, task }: Frame, values: ValueCode, score: Node): void {
  values.push(score);
  code
    .i32(0)
    .access('v128.load', layout.cutOff)
    .op(task.prefer === 'high' ? 'f64x2.ge' : 'f64x2.le');
  code.i32(0).access('v128.load', layout.open).op('v128.or');
  if (values.pushUncertain()) code.op('v128.or');
}

function storeRecord({ code, layout, amounts, rests, line, lineStart, recordEnd }: Frame, bits: Local): void {
  const store = (offset: number, push: () => void): void => {
    code.get(recordEnd);
    push();
    code.access('i32.store', layout.records + offset);
  };
  store(0, () => code.get(lineStart).get(amounts[line]!).op('i32.add'));
  store(4, () => code.get(bits));
  for (let place = 0; place <= line; place += 1) store(8 + 4 * place, () => code.get(amounts[place]!));
  store(8 + 4 * (line + 1), () => code.get(rests[line]!).get(amounts[line]!).op('i32.sub'));
  code.get(recordEnd).i32(layout.bytesPerRecord).op('i32.add').set(recordEnd);
}
