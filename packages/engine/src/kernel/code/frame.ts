import type { Code, Local } from '../emit.ts';
import type { Form } from '../form.ts';
import { formKey } from '../formKey.ts';
import type { Layout } from '../layout.ts';
import { type Counters, countersIn } from './counterCode.ts';
import { type FormLevels, formLevels } from './formLevels.ts';
import { type LineCondition, lineCondition } from './lineCondition.ts';
import type { Needs } from './needs.ts';
import { countersOf, type KernelTask } from './task.ts';

/** Lanes are two systems with the same points, or two neighbours on a line of one system. */
export type Lanes = 'systems' | 'line';

/** What the code of one kernel is written with: its locals, and what is built up level by level. */
export interface Frame {
  code: Code;
  task: KernelTask;
  layout: Layout;
  needs: Needs;
  elements: number;
  /** The level of the line: that of the last element but one. */
  line: number;
  /** Points from one step of the line to the next. */
  stride: number;
  /** By level: amounts, their last, and what the levels before leave. */
  amounts: readonly Local[];
  ends: readonly Local[];
  rests: readonly Local[];
  entropies: readonly Local[];
  /** Of the line, in bytes. */
  entropyRow: Local;
  /** Of the level at hand in both lanes, and of a level that is gone through again. */
  amount: Local;
  lateAmount: Local;
  /** Number of the line's first point, and that less the parts there; before a line, what bounds behind a level leave. */
  index: Local;
  lineStart: Local;
  /** Stepped along with the walk. */
  forms: readonly FormLevels[];
  /** Built up only at points that the others do not rule out. */
  late: readonly FormLevels[];
  formByKey: ReadonlyMap<string, FormLevels>;
  reaches: readonly FormLevels[];
  conditions: readonly LineCondition[];
  /** Of each test, where its points are counted or decided; and of all limits together. */
  masks: readonly Local[];
  counters: Counters;
  passes: Local;
  uncertain: Local;
  recordEnd: Local;
}

/** What a frame is made for; forms stand in the layout as they do here: needed ones, differences of the reaches, conditions. */
interface Parts {
  elements: number;
  lanes: Lanes;
  needs: Needs;
  /** So many of the needed forms are asked for at every point. */
  eager: number;
  differences: readonly Form[];
  conditions: readonly Form[];
}

export function frameOf(code: Code, task: KernelTask, layout: Layout, parts: Parts): Frame {
  const { elements, lanes, needs, eager } = parts;
  const stride = lanes === 'line' ? 2 : 1;
  const many = (count: number, type: 'i32' | 'v128') => Array.from({ length: count }, () => code.local(type));
  const locals = {
    amounts: many(elements - 1, 'i32'),
    ends: many(elements - 1, 'i32'),
    rests: many(elements - 1, 'i32'),
    entropies: many(elements - 2, 'v128'),
    entropyRow: code.local('i32'),
    amount: code.local('v128'),
    lateAmount: code.local('v128'),
    index: code.local('i32'),
    lineStart: code.local('i32'),
    masks: many(task.limits.length + (task.countsNothing ? 0 : task.counted.length), 'v128'),
    counters: countersIn(code, layout.counters, countersOf(task)),
    passes: code.local('v128'),
    uncertain: code.local('v128'),
    recordEnd: code.local('i32'),
  };
  const addresses = layout.forms.values();
  const levelsOf = (form: Form, lazy: boolean): FormLevels =>
    formLevels(code, form, addresses.next().value!, elements, stride, lazy);
  const needed = needs.forms.map((form, at) => levelsOf(form, at >= eager));
  const reaches = parts.differences.map((form) => levelsOf(form, false));
  const conditions = parts.conditions.map((form) => lineCondition(code, levelsOf(form, true)));
  return {
    ...{ code, task, layout, needs, elements, stride, line: elements - 2 },
    ...locals,
    forms: [...needed.slice(0, eager), ...reaches, ...conditions.map(({ levels }) => levels)],
    late: needed.slice(eager),
    formByKey: new Map(needs.forms.map((form, at) => [formKey(form), needed[at]!])),
    ...{ reaches, conditions },
  };
}

/** The parts of the line's element in each lane. */
export function pushAmount({ code, amounts, line, stride }: Frame): void {
  code.get(amounts[line]!).op('f64.convert_i32_s', 'f64x2.splat');
  if (stride === 2) code.lanes(0n, 0x3ff0_0000_0000_0000n).op('f64x2.add');
}
