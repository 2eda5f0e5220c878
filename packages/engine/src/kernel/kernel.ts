import { entropyTerm, evaluator } from '@tiegel/screening';
import type { Prepared } from '../prepared/prepare.ts';
import type { Lanes } from './code/frame.ts';
import { kernelCode } from './code/kernelCode.ts';
import { candidateShift } from './code/recordCode.ts';
import { countersOf } from './code/task.ts';
import type { SearchTask } from './kernelTask.ts';
import { writeLane } from './laneNumbers.ts';
import { type Layout, mostCounted, mostPointsOfCall } from './layout.ts';
import { partOfProgram } from './partOfProgram.ts';
import { webAssembly } from './webAssembly.ts';

/** Gets a point that the kernel is not sure of, or that may be kept. The amounts are overwritten afterwards. */
export type TakePoint = (lane: 0 | 1, uncertain: boolean, index: number, amounts: Int32Array) => void;

/** A kernel at work on systems of one number of elements. */
export interface Kernel {
  /** Turns to other systems, the same one twice for lanes along a line; false where a step that all points share is not finite. */
  enter(systems: readonly [readonly number[], readonly number[]]): boolean;
  /** The number that the next point has. */
  startAt(index: number): void;
  /** The score that a point must reach to be handed over; null where every score does. */
  setCutOff(score: number | null): void;
  /** Sets one of the conditions on lines: constant + Σ slopeᵢ xᵢ ≤ 0, by place, which is eased by what rounding may do. */
  setCondition(
    at: number,
    constant: number,
    slopes: ArrayLike<number>,
    low: ArrayLike<number>,
    high: ArrayLike<number>,
  ): void;
  /** Walks the points between bounds that hold some; returns how many there are in a lane of systems, or on lines. */
  sweep(low: ArrayLike<number>, high: ArrayLike<number>): number;
  /** Counts since the last call, of both lanes: limits, counted tests, and all limits together. */
  takeCounts(): number[];
}

/** Far more, of the size of its terms, than a linear function is rounded that is built up part by part. */
const CONDITION_SLACK = 2 ** -38;

/**
 * Generates a kernel and readies its memory.
 * @throws Unprovable where no kernel can be sure of anything
 */
export function kernel(
  { program }: Prepared,
  task: SearchTask,
  elements: number,
  lanes: Lanes,
  take: TakePoint,
): Kernel {
  const { bytes, numbers, layout, forms, constants } = kernelCode(task, elements, lanes);
  const memory = new webAssembly.Memory({ initial: Math.ceil(layout.bytes / 65536) });
  const instance = new webAssembly.Instance(new webAssembly.Module(bytes), {
    host: { memory },
  });
  const sweepAll = instance.exports.sweep!;
  const integers = new Int32Array(memory.buffer);
  const doubles = new Float64Array(memory.buffer);
  const shorts = new Uint16Array(memory.buffer);
  const words = new Uint32Array(memory.buffer);
  const counts = new Float64Array(countersOf(task));
  /** Points in a lane, at most, since counts were taken out of the memory. */
  let uncollected = 0;
  for (const [at, value] of numbers.entries())
    doubles.fill(value, layout.numbers / 8 + 2 * at, layout.numbers / 8 + 2 * at + 2);
  writeEntropies(doubles, layout, task.total);

  const ofSystem = evaluator(partOfProgram(program, constants));
  const values = new Float64Array(constants.length);
  const present = new Float64Array(elements).fill(1);
  const amounts = new Int32Array(elements);

  function collectCounts(): void {
    const start = layout.counters / 2;
    for (let at = 0; at < counts.length; at += 1) {
      counts[at]! += shorts[start + 2 * at]! + shorts[start + 2 * at + 1]!;
    }
    shorts.fill(0, start, start + 2 * counts.length);
    uncollected = 0;
  }

  function takeRecords(): void {
    const end = (layout.records + integers[layout.recordEnd / 4]!) / 4;
    for (let at = layout.records / 4; at < end; at += layout.bytesPerRecord / 4) {
      const bits = integers[at + 1]!;
      for (let lane = 0; lane < 2; lane += 1) {
        const uncertain = (bits >> lane) & 1;
        if (uncertain === 0 && ((bits >> (lane + candidateShift)) & 1) === 0) continue;
        for (let place = 0; place < elements; place += 1) amounts[place] = integers[at + 2 + place]!;
        let index = integers[at]!;
        if (lanes === 'line' && lane === 1) {
          index += 1;
          amounts[elements - 2]! += 1;
          amounts[elements - 1]! -= 1;
        }
        take(lane as 0 | 1, uncertain === 1, index, amounts);
      }
    }
  }

  const reaches = task.score === null ? [] : task.reaches;
  const differences = reaches.map((reach, at) => {
    const start = layout.forms[forms.length + at]! / 8;
    const end = (layout.forms[forms.length + at + 1] ?? layout.entropy) / 8;
    return { ...reach, start, of: new Float64Array(end - start), times: new Float64Array(end - start) };
  });
  let latest: number | null | undefined;

  /** The differences of the reaches, for the systems entered and a cut-off. */
  function writeDifferences(score: number | null): void {
    if (score === latest) return;
    latest = score;
    for (const { above, below, bound, slack, start, of, times } of differences) {
      const factor = score === null ? Number.POSITIVE_INFINITY : bound(score);
      if (!(Math.abs(factor) < 1e200)) {
        doubles.fill(0, start, start + of.length);
        doubles.fill(-1, start, start + 2);
        continue;
      }
      for (let at = 0; at < of.length; at += 1) {
        doubles[start + at] = above.scale * of[at]! - factor * below.scale * times[at]!;
      }
      const margin = slack(factor);
      doubles[start]! -= margin;
      doubles[start + 1]! -= margin;
    }
  }

  /** What the compared number must reach for a score to reach a cut-off, less what either may be off. */
  function comparedWith(score: number, margin: number): number {
    const sign = task.prefer === 'high' ? -1 : 1;
    if (task.raised === null) return score + sign * margin;
    const { node, of, slack } = task.raised;
    // No power is below 0: −1 is reached by all of them, and from above by none.
    const eased = score + 2 * sign * margin;
    const power = eased < 0 ? -1 : of(eased);
    const { absolute, relative } = node.slack;
    const size = Math.abs(power);
    return power + sign * (1.01 * (absolute + relative * size) + slack * size + Number.MIN_VALUE);
  }

  return {
    enter(systems) {
      latest = undefined;
      for (const [lane, system] of systems.entries()) {
        for (const [at, form] of forms.entries()) {
          writeLane(form, system, task.total, doubles, layout.forms[at]! / 8 + lane);
        }
        for (const { above, below, of, times } of differences) {
          writeLane(above, system, task.total, of, lane);
          writeLane(below, system, task.total, times, lane);
        }
        if (constants.length === 0) continue;
        ofSystem.evaluate(system, present, elements, values);
        for (const [at, value] of values.entries()) {
          if (!Number.isFinite(value)) return false;
          doubles[layout.constants / 8 + 2 * at + lane] = value;
        }
      }
      return true;
    },
    startAt(index) {
      integers[layout.index / 4] = index;
    },
    setCutOff(score) {
      const { absolute, relative } = task.scoreSlack;
      const size = Math.abs(score ?? 0);
      const margin = 1.01 * (absolute + relative * size) + 2 ** -50 * size + Number.MIN_VALUE;
      const reached = task.prefer === 'high' ? (score ?? 0) - margin : (score ?? 0) + margin;
      writeDifferences(score === null ? null : reached);
      doubles.fill(comparedWith(score ?? 0, margin), layout.cutOff / 8, layout.cutOff / 8 + 2);
      words.fill(score === null ? 0xffff_ffff : 0, layout.open / 4, layout.open / 4 + 4);
    },
    setCondition(at, constant, slopes, low, high) {
      const last = slopes[elements - 1]!;
      let size = Math.abs(constant);
      for (let place = 0; place < elements; place += 1) size += Math.abs(slopes[place]!) * task.total;
      const start = layout.forms[forms.length + reaches.length + at]! / 8;
      doubles.fill(constant + last * task.total - CONDITION_SLACK * size, start, start + 2);
      for (let place = 0; place < elements - 1; place += 1) {
        doubles.fill(slopes[place]! - last, start + 2 * place + 2, start + 2 * place + 4);
      }
      for (let level = elements - 3; level >= 0; level -= 1) {
        // Σ sᵢxᵢ of what is behind a level is m Σ xᵢ + Σ (sᵢ − m) xᵢ, for any m.
        let m = 0;
        for (let place = level + 1; place < elements; place += 1) m += slopes[place]!;
        m /= elements - 1 - level;
        let least = 0;
        for (let place = level + 1; place < elements; place += 1) {
          const further = slopes[place]! - m;
          least += further * (further < 0 ? high[place]! : low[place]!);
        }
        const here = layout.ahead / 8 + 4 * (at * elements + level);
        doubles.fill(m - last, here, here + 2);
        doubles.fill(CONDITION_SLACK * size - least, here + 2, here + 4);
      }
    },
    sweep(low, high) {
      let [least, most] = [0, 0];
      for (let place = elements - 1; place >= 0; place -= 1) {
        integers[layout.low / 4 + place] = low[place]!;
        integers[layout.high / 4 + place] = high[place]!;
        integers[layout.leastBehind / 4 + place] = least;
        integers[layout.mostBehind / 4 + place] = most;
        least += low[place]!;
        most += high[place]!;
      }
      const before = integers[layout.index / 4]!;
      if (uncollected > mostCounted - mostPointsOfCall) collectCounts();
      sweepAll();
      takeRecords();
      const points = integers[layout.index / 4]! - before;
      uncollected += points;
      return points;
    },
    takeCounts() {
      collectCounts();
      const taken = Array.from(counts);
      counts.fill(0);
      return taken;
    },
  };
}

/** −c ln c of one element, and of the two elements of a line. */
function writeEntropies(
  doubles: Float64Array,
  { entropy, entropyOfLine, bytesPerRow }: Layout,
  total: number,
): void {
  const terms = Array.from({ length: total + 1 }, (_, parts) => 0 - entropyTerm(parts / total));
  doubles.set(terms, entropy / 8);
  for (let both = 0; both <= total; both += 1) {
    const row = (entropyOfLine + both * bytesPerRow) / 8;
    for (let parts = 0; parts <= both; parts += 1)
      doubles[row + parts] = terms[parts]! + terms[both - parts]!;
  }
}
