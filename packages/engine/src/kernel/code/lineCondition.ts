import type { Code, Local } from '../emit.ts';
import type { FormLevels } from './formLevels.ts';

/** A condition on lines: 1 over its slope, and whether that is above or below 0. */
export interface LineCondition {
  levels: FormLevels;
  inverse: Local;
  isRising: Local;
  isFalling: Local;
}

/** Sets what is the same on all lines of a condition. */
export function lineCondition(code: Code, levels: FormLevels): LineCondition {
  const [inverse, isRising, isFalling] = [code.local('v128'), code.local('i32'), code.local('i32')];
  code.splat(1);
  levels.pushSlope();
  code.op('f64x2.div').set(inverse);
  for (const [sign, into] of [
    ['f64x2.gt', isRising],
    ['f64x2.lt', isFalling],
  ] as const) {
    levels.pushSlope();
    code.splat(0).op(sign, 'i64x2.bitmask').i32(1).op('i32.and').set(into);
  }
  return { levels, inverse, isRising, isFalling };
}
