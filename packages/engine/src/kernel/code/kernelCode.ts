import { loosened, type Test } from '../comparison/test.ts';
import type { Tests } from '../comparison/testsOf.ts';
import { type Code, functionCode, type Local, moduleOf } from '../emit.ts';
import type { Form } from '../form.ts';
import { formKey } from '../formKey.ts';
import { type Layout, layoutOf, vectorsOfCounters } from '../layout.ts';
import type { Node } from '../node.ts';
import type { Reach } from '../reach.ts';
import type { Unrooted } from '../unrooted.ts';
import { type FormLevels, formLevels } from './formLevels.ts';
import { type Needs, needsOf } from './needs.ts';
import type { ValueCode } from './scope.ts';
import { valueCode } from './valueCode.ts';

/** What a kernel decides at each point. */
export interface KernelTask {
  /** Each is counted, and the points that meet all of them. */
  limits: readonly Test[];
  /** Tests that are counted beside: whether limited quantities have a value. */
  counted: readonly Test[];
  /** What the points that meet all limits are ranked by; null where none is kept. */
  score: Node | null;
  /** A power of the score that is compared with the cut-off in its place; null: the score itself is. */
  raised: Unrooted | null;
  prefer: 'high' | 'low';
  /** What a point must meet for its score to reach the cut-off. */
  reaches: readonly Reach[];
  tests: Tests;
  /**
   * So many linear functions of the parts, given as data, must be at most 0 at points that are
   * wanted: each line is cut to where they are, and what lies beyond is not counted.
   */
  conditions?: number;
  /**
   * Only the best are wanted. Nothing is counted, and of most points nothing is formed but what the cut-off and
   * the limits that are forms need to rule them out.
   */
  countsNothing?: boolean;
  /** Parts that make the whole. */
  total: number;
}

/** A condition on lines: 1 over its slope, and whether that is above or below 0. */
interface LineCondition {
  levels: FormLevels;
  inverse: Local;
  isRising: Local;
  isFalling: Local;
}

/** Further than any line reaches. */
const FAR = 1e6;

/** Lanes are two systems with the same points, or two neighbours on a line of one system. */
export type Lanes = 'systems' | 'line';

/** Bits of a record: two of points that the canonical evaluator must decide, then two of points that may be kept. */
export const candidateShift = 2;

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
  const layout = layoutOf(
    [...needs.forms, ...differences, ...conditionsOf(task, lanes)],
    elements,
    task.total,
    vectorsOfCounters(countersOf(task)),
    needs.constants.length,
    conditionsOf(task, lanes).length,
  );
  const code = functionCode(layout.numbers);
  new Walk(code, task, layout, elements, lanes, needs, eager).write();
  return { ...moduleOf(code), layout, ...needs };
}

/** What a kernel counts: points that meet each limit and each counted test, and all limits together. */
export function countersOf({ limits, counted, countsNothing }: KernelTask): number {
  return countsNothing ? 0 : limits.length + counted.length + 1;
}

/** What is compared with the cut-off. */
const comparedIn = ({ score, raised }: KernelTask): Node | null => raised?.node ?? score;

/** A form of the degree of both. */
function differenceOf({ above, below }: Reach): Form {
  return above.degree > below.degree ? above : below;
}

/** The conditions of a kernel along lines; only the shape of their numbers counts. */
function conditionsOf({ conditions = 0 }: KernelTask, lanes: Lanes): Form[] {
  const linear = { degree: 1, scale: 1, constant: 0, linear: new Float64Array(), exact: false } as const;
  return lanes === 'line' ? new Array<Form>(conditions).fill({ ...linear, quadratic: null }) : [];
}

/** The code of one kernel while it is written: its locals, and what is done level by level. */
class Walk {
  private readonly code: Code;
  private readonly task: KernelTask;
  private readonly layout: Layout;
  private readonly elements: number;
  private readonly stride: number;
  private readonly forms: FormLevels[] = [];
  /** Built up only at points that the others do not rule out. */
  private readonly late: FormLevels[] = [];
  private readonly formByKey = new Map<string, FormLevels>();
  private readonly reaches: FormLevels[] = [];
  private readonly conditions: LineCondition[] = [];
  private readonly needs: Needs;
  /** By level: amounts, their last, and what the levels before leave. */
  private readonly amounts: Local[];
  private readonly ends: Local[];
  private readonly rests: Local[];
  private readonly entropies: Local[];
  /** Of the line, in bytes. */
  private readonly entropyRow: Local;
  private readonly amount: Local;
  private readonly lateAmount: Local;
  private readonly index: Local;
  private readonly lineStart: Local;
  private readonly masks: Local[];
  /** Four counts a vector, each as two numbers of 16 bits, one a lane; and what the last step added to them. */
  private readonly counters: Local[];
  private readonly packed: Local[];
  private readonly passes: Local;
  private readonly uncertain: Local;
  private readonly recordEnd: Local;

  constructor(
    code: Code,
    task: KernelTask,
    layout: Layout,
    elements: number,
    lanes: Lanes,
    needs: Needs,
    eager: number,
  ) {
    this.code = code;
    this.task = task;
    this.layout = layout;
    this.elements = elements;
    this.stride = lanes === 'line' ? 2 : 1;
    const many = (count: number, type: 'i32' | 'v128') =>
      Array.from({ length: count }, () => code.local(type));
    this.amounts = many(elements - 1, 'i32');
    this.ends = many(elements - 1, 'i32');
    this.rests = many(elements - 1, 'i32');
    this.entropies = many(elements - 2, 'v128');
    this.entropyRow = code.local('i32');
    this.amount = code.local('v128');
    this.lateAmount = code.local('v128');
    this.index = code.local('i32');
    this.lineStart = code.local('i32');
    this.masks = many(task.limits.length + (task.countsNothing ? 0 : task.counted.length), 'v128');
    this.counters = many(vectorsOfCounters(countersOf(task)), 'v128');
    this.packed = many(this.counters.length, 'v128');
    this.passes = code.local('v128');
    this.uncertain = code.local('v128');
    this.recordEnd = code.local('i32');
    this.needs = needs;
    for (const [at, form] of needs.forms.entries()) {
      const levels = formLevels(code, form, layout.forms[at]!, elements, this.stride, at >= eager);
      this.formByKey.set(formKey(form), levels);
      (at >= eager ? this.late : this.forms).push(levels);
    }
    for (const [at, reach] of (task.score ? task.reaches : []).entries()) {
      const address = layout.forms[needs.forms.length + at]!;
      this.reaches.push(formLevels(code, differenceOf(reach), address, elements, this.stride, false));
    }
    this.forms.push(...this.reaches);
    const before = needs.forms.length + this.reaches.length;
    for (const [at, form] of conditionsOf(task, lanes).entries()) {
      const address = layout.forms[before + at]!;
      const levels = formLevels(code, form, address, elements, this.stride, true);
      this.conditions.push(this.readyCondition(levels));
      this.forms.push(levels);
    }
  }

  write(): void {
    const { code, layout } = this;
    code.i32(0).access('i32.load', layout.index).set(this.index);
    for (const [at, counter] of this.counters.entries()) {
      code
        .i32(0)
        .access('v128.load', layout.counters + 16 * at)
        .set(counter);
    }
    this.level(0);
    code.i32(0).get(this.index).access('i32.store', layout.index);
    code.i32(0).get(this.recordEnd).access('i32.store', layout.recordEnd);
    for (const [at, counter] of this.counters.entries()) {
      code
        .i32(0)
        .get(counter)
        .access('v128.store', layout.counters + 16 * at);
    }
  }

  /** Sets the amounts of a level to their least, and their end. */
  private range(level: number): void {
    const { code, layout } = this;
    const rest = this.rests[level]!;
    if (level === 0) code.i32(this.task.total).set(rest);
    else
      code
        .get(this.rests[level - 1]!)
        .get(this.amounts[level - 1]!)
        .op('i32.sub')
        .set(rest);
    this.bound(this.amounts[level]!, layout.low + 4 * level, rest, layout.mostBehind + 4 * level, 'i32.gt_s');
    this.bound(this.ends[level]!, layout.high + 4 * level, rest, layout.leastBehind + 4 * level, 'i32.lt_s');
    code.get(this.amounts[level]!);
  }

  /** The greater, or the lesser, of a bound and of what the bounds behind leave. */
  private bound(
    into: Local,
    bound: number,
    rest: Local,
    behind: number,
    choose: 'i32.gt_s' | 'i32.lt_s',
  ): void {
    const { code } = this;
    code.i32(0).access('i32.load', bound).set(into);
    code.get(rest).i32(0).access('i32.load', behind).op('i32.sub').set(this.lineStart);
    code.get(into).get(this.lineStart).get(into).get(this.lineStart).op(choose, 'select').set(into);
  }

  private level(level: number): void {
    if (level === this.elements - 2) {
      this.line();
      return;
    }
    const { code } = this;
    const amount = this.amounts[level]!;
    code.block('block');
    this.range(level);
    code.get(this.ends[level]!).op('i32.gt_s').branch(0, 'if');
    code.get(amount).op('f64.convert_i32_s', 'f64x2.splat').set(this.amount);
    for (const form of this.forms) form.begin(level, this.amount);
    code.block('loop');
    if (this.needs.entropy) {
      code.get(amount).i32(3).op('i32.shl').access('v128.load64_splat', this.layout.entropy);
      if (level > 0) code.get(this.entropies[level - 1]!).op('f64x2.add');
      code.set(this.entropies[level]!);
    }
    code.block('block');
    this.skip(level);
    this.level(level + 1);
    code.end();
    for (const form of this.forms) form.step(level);
    code.get(amount).i32(1).op('i32.add').tee(amount).get(this.ends[level]!).op('i32.le_s').branch(0, 'if');
    code.end().end();
  }

  /** Leaves the block where a condition does not hold whatever the elements behind this level take. */
  private skip(level: number): void {
    const { code, layout } = this;
    if (this.conditions.length === 0) return;
    code.get(this.rests[level]!).get(this.amounts[level]!).op('i32.sub', 'f64.convert_i32_s', 'f64x2.splat');
    code.set(this.lateAmount);
    for (const [at, { levels }] of this.conditions.entries()) {
      const address = layout.ahead + 32 * (at * this.elements + level);
      levels.pushValue(level);
      code.get(this.lateAmount).i32(0).access('v128.load', address).op('f64x2.mul', 'f64x2.add');
      code
        .i32(0)
        .access('v128.load', address + 16)
        .op('f64x2.gt');
      if (at > 0) code.op('v128.or');
    }
    code.op('v128.any_true').branch(0, 'if');
  }

  /** The parts of the line's element in each lane. */
  private pushAmount(): void {
    const { code } = this;
    code.get(this.amounts[this.elements - 2]!).op('f64.convert_i32_s', 'f64x2.splat');
    if (this.stride === 2) code.lanes(0n, 0x3ff0_0000_0000_0000n).op('f64x2.add');
  }

  private line(): void {
    const { code, stride } = this;
    const line = this.elements - 2;
    const [amount, end] = [this.amounts[line]!, this.ends[line]!];
    const [first] = [code.local('i32')];
    code.block('block');
    this.range(line);
    code.tee(first).get(end).op('i32.gt_s').branch(0, 'if');
    code.get(this.index).get(first).op('i32.sub').set(this.lineStart);
    this.pushAmount();
    code.set(this.amount);
    if (this.needs.entropy) {
      code.get(this.rests[line]!).i32(this.layout.bytesPerRow).op('i32.mul').set(this.entropyRow);
    }
    const [all] = [code.local('i32')];
    code.get(end).set(all);
    code.block('block');
    if (this.conditions.length > 0) this.cutLine(amount, end);
    for (const form of this.forms) form.beginLine(this.amount);
    code.block('loop');
    this.point();
    for (const form of this.forms) form.stepLine();
    code.get(amount).i32(stride).op('i32.add').tee(amount).get(end).op('i32.le_s').branch(0, 'if');
    code.end();
    if (stride === 2 && this.counters.length > 0) this.forgetTail(amount, end);
    code.end();
    code.get(this.index).get(all).op('i32.add').get(first).op('i32.sub').i32(1).op('i32.add').set(this.index);
    code.end();
  }

  /**
   * Cuts a line to where the conditions hold, or a part further on either side so that rounding does
   * not matter; leaves the block where nothing remains. Along the line each crosses 0 once.
   */
  private cutLine(amount: Local, end: Local): void {
    const { code } = this;
    const [place, last] = [code.local('i32'), code.local('i32')];
    for (const { levels, inverse, isRising, isFalling } of this.conditions) {
      code.get(this.amount);
      levels.push(() => code.get(this.amount));
      code.get(inverse).op('f64x2.mul', 'f64x2.sub');
      code.splat(FAR).op('f64x2.pmin').splat(-FAR).op('f64x2.pmax');
      code
        .op('i32x4.trunc_sat_f64x2_s_zero', 'i32x4.extract_lane 0')
        .tee(place)
        .i32(1)
        .op('i32.add')
        .set(last);
      code.get(last).get(end).get(isRising);
      code.get(last).get(end).op('i32.lt_s', 'i32.and', 'select').set(end);
      code.get(place).get(amount).get(isFalling);
      code.get(place).get(amount).op('i32.gt_s', 'i32.and', 'select').set(amount);
    }
    code.get(amount).get(end).op('i32.gt_s').branch(0, 'if');
    this.pushAmount();
    code.set(this.amount);
  }

  /** What is the same on all lines of a condition. */
  private readyCondition(levels: FormLevels): LineCondition {
    const { code } = this;
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

  /** On a line of an odd number of points the second lane of the last step is no point. Without a branch: none could be foreseen. */
  private forgetTail(amount: Local, end: Local): void {
    const { code } = this;
    const tail = code.local('v128');
    code.get(amount).i32(1).op('i32.sub', 'f64.convert_i32_s', 'f64x2.splat');
    code.get(end).op('f64.convert_i32_s', 'f64x2.splat', 'f64x2.gt');
    code.lanes(0n, -1n).op('v128.and').set(tail);
    this.uncount(tail);
  }

  /** Counts the last step: a mask is −1 or 0 in each lane, and stays so when it is made narrow. */
  private count(): void {
    const { code } = this;
    for (const [at, counter] of this.counters.entries()) {
      const masks = [0, 1, 2, 3].map((place) => this.masks[4 * at + place] ?? this.passes);
      this.pushPacked(masks);
      code.set(this.packed[at]!);
      code.get(counter).get(this.packed[at]!).op('i16x8.sub').set(counter);
    }
  }

  private pushPacked([a, b, c, d]: readonly Local[]): void {
    const { code } = this;
    code.get(a!).get(b!).op('i16x8.narrow_i32x4_s');
    code.get(c!).get(d!).op('i16x8.narrow_i32x4_s', 'i8x16.narrow_i16x8_s');
  }

  /** Takes back what the last step counted in some lanes. */
  private uncount(lanes: Local): void {
    const { code } = this;
    const packed = code.local('v128');
    this.pushPacked([lanes, lanes, lanes, lanes]);
    code.set(packed);
    for (const [at, counter] of this.counters.entries()) {
      code.get(counter).get(this.packed[at]!).get(packed).op('v128.and', 'i16x8.add').set(counter);
    }
  }

  private point(): void {
    const { code, task } = this;
    const values = this.values();
    if (task.countsNothing) {
      this.pushNotRuledOut(values);
      code.op('v128.any_true').seldom();
      this.beginLate();
      const inside = values.inner();
      this.record(inside, this.testLimits(inside));
      code.end();
      return;
    }
    const unsure = this.testLimits(values);
    if (task.score) {
      code.get(this.passes);
      this.pushReached();
      code.op('v128.and');
      if (unsure) code.get(this.uncertain).op('v128.or');
    } else if (unsure) code.get(this.uncertain);
    else return;
    code.op('v128.any_true').seldom();
    this.beginLate();
    this.record(values, unsure);
    code.end();
  }

  private values(): ValueCode {
    const { code, task, needs } = this;
    return valueCode(code, {
      form: (form) => this.formByKey.get(formKey(form))!.push(() => this.pushAmount()),
      entropy: () => this.pushEntropy(),
      system: (step) =>
        code.i32(0).access('v128.load', this.layout.constants + 16 * needs.constants.indexOf(step)),
      tests: task.tests,
    });
  }

  /** Sets and counts what passes and what is uncertain; whether anything may be. */
  private testLimits(values: ValueCode): boolean {
    const { code, task } = this;
    for (const [at, mask] of this.masks.entries()) {
      values.pushTest(task.limits[at] ?? task.counted[at - task.limits.length]!);
      code.set(mask);
    }
    if (task.limits.length === 0) code.bits(-1n);
    for (const [at] of task.limits.entries()) {
      code.get(this.masks[at]!);
      if (at > 0) code.op('v128.and');
    }
    code.set(this.passes);
    this.count();
    const unsure = values.pushUncertain();
    if (unsure) code.set(this.uncertain);
    return unsure;
  }

  /** Whether the scores may reach the cut-off. */
  private pushReached(): void {
    const { code } = this;
    if (this.reaches.length === 0) code.bits(-1n);
    for (const [at, reach] of this.reaches.entries()) {
      reach.push(() => this.pushAmount());
      code.splat(0).op('f64x2.le');
      if (at > 0) code.op('v128.and');
    }
  }

  /** Where neither the cut-off nor a limit that is a form rules a point out; what is uncertain is not ruled out. */
  private pushNotRuledOut(values: ValueCode): void {
    this.pushReached();
    for (const limit of this.task.limits) {
      const test = loosened(limit);
      if (test.kind === 'always') continue;
      values.pushTest(test);
      this.code.op('v128.and');
    }
  }

  private beginLate(): void {
    const { code } = this;
    for (let level = 0; level < this.elements - 2 && this.late.length > 0; level += 1) {
      code.get(this.amounts[level]!).op('f64.convert_i32_s', 'f64x2.splat').set(this.lateAmount);
      for (const form of this.late) form.begin(level, this.lateAmount);
    }
  }

  private pushEntropy(): void {
    const { code, layout } = this;
    const line = this.elements - 2;
    code.get(this.amounts[line]!).i32(3).op('i32.shl').get(this.entropyRow).op('i32.add');
    code.access(this.stride === 2 ? 'v128.load' : 'v128.load64_splat', layout.entropyOfLine);
    if (line > 0) code.get(this.entropies[line - 1]!).op('f64x2.add');
  }

  /** Of two points some may be kept or are uncertain: if they really do, they become a record. */
  private record(values: ValueCode, unsure: boolean): void {
    const { code, task } = this;
    const [unknown, candidates, bits] = [code.local('v128'), code.local('v128'), code.local('i32')];
    if (this.stride === 2) this.pushValidLanes();
    else code.bits(-1n);
    const valid = code.local('v128');
    code.set(valid);
    if (unsure) {
      code.get(this.uncertain).get(valid).op('v128.and').tee(unknown).op('v128.any_true').block('if');
      this.uncount(unknown);
      code.end();
    }
    const compared = comparedIn(task);
    if (compared) {
      this.pushReachesCutOff(values.inner(), compared);
      code.get(this.passes).op('v128.and').get(valid).op('v128.and');
      if (unsure) code.get(unknown).op('v128.andnot');
      code.set(candidates);
      code.get(candidates).op('i64x2.bitmask').i32(candidateShift).op('i32.shl');
    } else {
      code.i32(0);
    }
    if (unsure) code.get(unknown).op('i64x2.bitmask', 'i32.or');
    code.tee(bits).block('if');
    this.writeRecord(bits);
    code.end();
  }

  private pushValidLanes(): void {
    const { code } = this;
    const line = this.elements - 2;
    code.bits(-1n).lanes(-1n, 0n).get(this.amounts[line]!).get(this.ends[line]!).op('i32.lt_s', 'select');
  }

  private pushReachesCutOff(values: ValueCode, score: Node): void {
    const { code, layout, task } = this;
    values.push(score);
    code
      .i32(0)
      .access('v128.load', layout.cutOff)
      .op(task.prefer === 'high' ? 'f64x2.ge' : 'f64x2.le');
    code.i32(0).access('v128.load', layout.open).op('v128.or');
    if (values.pushUncertain()) code.op('v128.or');
  }

  private writeRecord(bits: Local): void {
    const { code, layout, elements } = this;
    const line = elements - 2;
    const at = this.recordEnd;
    const store = (offset: number, push: () => void): void => {
      code.get(at);
      push();
      code.access('i32.store', layout.records + offset);
    };
    store(0, () => code.get(this.lineStart).get(this.amounts[line]!).op('i32.add'));
    store(4, () => code.get(bits));
    for (let place = 0; place <= line; place += 1) store(8 + 4 * place, () => code.get(this.amounts[place]!));
    store(8 + 4 * (line + 1), () => code.get(this.rests[line]!).get(this.amounts[line]!).op('i32.sub'));
    code.get(at).i32(layout.bytesPerRecord).op('i32.add').set(at);
  }
}
