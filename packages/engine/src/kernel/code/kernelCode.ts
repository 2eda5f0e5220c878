import { loosened } from '../comparison/test.ts';
import { functionCode, moduleOf } from '../emit.ts';
import type { Form } from '../form.ts';
import { type Layout, layoutOf, vectorsOfCounters } from '../layout.ts';
import type { Reach } from '../reach.ts';
import { frameOf, type Lanes } from './frame.ts';
import { writeLevel } from './levelCode.ts';
import { needsOf } from './needs.ts';
import { comparedIn, countersOf, type KernelTask } from './task.ts';

export interface KernelCode {
  bytes: Uint8Array<ArrayBuffer>;
  /** What it expects at layout.numbers, both lanes of a vector alike. */
  numbers: readonly number[];
  layout: Layout;
  /** In the order of layout.forms; behind them stand the differences of the reaches, above less bound · below. */
  forms: readonly Form[];
  /** Steps of the program that are one number for each system, in the order of their vectors. */
  constants: readonly number[];
}

/**
 * A module that walks all points of a box of systems of so many elements, two at a time: the first
 * elements in nested loops, the last but one along a line, the last takes what is left. At each step
 * it tests the limits and counts; points that it is not sure of, and points that meet all limits and
 * reach the cut-off, become records. Counts leave out the points that it is not sure of.
 *
 * A record is i32 number of the point, i32 bits (uncertain lanes 0 and 1, candidate lanes 2 and 3),
 * i32 parts of lane 0 by place. There is room for one at each step of a call.
 */
export function kernelCode(task: KernelTask, elements: number, lanes: Lanes): KernelCode {
  const counted = task.countsNothing ? [] : [...task.limits, ...task.counted];
  const everywhere = task.countsNothing ? task.limits.map(loosened) : counted;
  const compared = comparedIn(task);
  const eager = needsOf(everywhere, [], task.tests).forms.length;
  const needs = needsOf([...everywhere, ...task.limits], compared ? [compared] : [], task.tests);
  const differences = task.score ? task.reaches.map(differenceOf) : [];
  const conditions = conditionsOf(task, lanes);
  const layout = layoutOf(
    [...needs.forms, ...differences, ...conditions],
    elements,
    task.total,
    vectorsOfCounters(countersOf(task)),
    needs.constants.length,
    conditions.length,
  );
  const code = functionCode(layout.numbers);
  const frame = frameOf(code, task, layout, { elements, lanes, needs, eager, differences, conditions });
  code.i32(0).access('i32.load', layout.index).set(frame.index);
  frame.counters.load();
  writeLevel(frame, 0);
  code.i32(0).get(frame.index).access('i32.store', layout.index);
  code.i32(0).get(frame.recordEnd).access('i32.store', layout.recordEnd);
  frame.counters.store();
  return { ...moduleOf(code), layout, ...needs };
}

/** A form of the degree of both. */
function differenceOf({ above, below }: Reach): Form {
  return above.degree > below.degree ? above : below;
}

/** The conditions of a kernel along lines; only the shape of their numbers counts. */
function conditionsOf({ conditions = 0 }: KernelTask, lanes: Lanes): Form[] {
  const linear = { degree: 1, scale: 1, constant: 0, linear: new Float64Array(), exact: false } as const;
  return lanes === 'line' ? new Array<Form>(conditions).fill({ ...linear, quadratic: null }) : [];
}
