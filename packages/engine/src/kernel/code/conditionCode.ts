import type { Local } from '../emit.ts';
import { type Frame, pushAmount } from './frame.ts';

/** Further than any line reaches. */
const FAR = 1e6;

/** Leaves the block where a condition does not hold whatever the elements behind a level take. */
export function leaveLevel({ code, layout, conditions, ...frame }: Frame, level: number): void {
  if (conditions.length === 0) return;
  code.get(frame.rests[level]!).get(frame.amounts[level]!).op('i32.sub', 'f64.convert_i32_s', 'f64x2.splat');
  code.set(frame.lateAmount);
  for (const [at, { levels }] of conditions.entries()) {
    const address = layout.ahead + 32 * (at * frame.elements + level);
    levels.pushValue(level);
    code.get(frame.lateAmount).i32(0).access('v128.load', address).op('f64x2.mul', 'f64x2.add');
    code
      .i32(0)
      .access('v128.load', address + 16)
      .op('f64x2.gt');
    if (at > 0) code.op('v128.or');
  }
  code.op('v128.any_true').branch(0, 'if');
}

/**
 * Cuts a line to where the conditions hold, or a part further on either side so that rounding does
 * not matter; leaves the block where nothing remains. Along the line each crosses 0 once.
 */
export function cutLine(frame: Frame, amount: Local, end: Local): void {
  const { code } = frame;
  if (frame.conditions.length === 0) return;
  const [place, last] = [code.local('i32'), code.local('i32')];
  for (const { levels, inverse, isRising, isFalling } of frame.conditions) {
    code.get(frame.amount);
    levels.push(() => code.get(frame.amount));
    code.get(inverse).op('f64x2.mul', 'f64x2.sub');
    code.splat(FAR).op('f64x2.pmin').splat(-FAR).op('f64x2.pmax');
    code.op('i32x4.trunc_sat_f64x2_s_zero', 'i32x4.extract_lane 0').tee(place).i32(1).op('i32.add').set(last);
    code.get(last).get(end).get(isRising);
    code.get(last).get(end).op('i32.lt_s', 'i32.and', 'select').set(end);
    code.get(place).get(amount).get(isFalling);
    code.get(place).get(amount).op('i32.gt_s', 'i32.and', 'select').set(amount);
  }
  code.get(amount).get(end).op('i32.gt_s').branch(0, 'if');
  pushAmount(frame);
  code.set(frame.amount);
}
