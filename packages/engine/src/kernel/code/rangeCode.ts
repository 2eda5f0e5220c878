import type { Local } from '../emit.ts';
import type { Frame } from './frame.ts';

/** Sets the amount of a level to its least, which stays on the stack, and its end. */
export function pushRange(frame: Frame, level: number): void {
  const { code, layout, task, amounts, ends, rests } = frame;
  const rest = rests[level]!;
  if (level === 0) code.i32(task.total).set(rest);
  else
    code
      .get(rests[level - 1]!)
      .get(amounts[level - 1]!)
      .op('i32.sub')
      .set(rest);
  const [low, high] = [layout.low + 4 * level, layout.high + 4 * level];
  bound(frame, amounts[level]!, low, rest, layout.mostBehind + 4 * level, 'i32.gt_s');
  bound(frame, ends[level]!, high, rest, layout.leastBehind + 4 * level, 'i32.lt_s');
  code.get(amounts[level]!);
}

/** The greater, or the lesser, of a bound and of what the bounds behind leave. */
function bound(
  { code, lineStart: left }: Frame,
  into: Local,
  address: number,
  rest: Local,
  behind: number,
  choose: 'i32.gt_s' | 'i32.lt_s',
): void {
  code.i32(0).access('i32.load', address).set(into);
  code.get(rest).i32(0).access('i32.load', behind).op('i32.sub').set(left);
  code.get(into).get(left).get(into).get(left).op(choose, 'select').set(into);
}
