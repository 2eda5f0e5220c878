import type { Lanes } from '../../kernel/code/frame.ts';
import { type Kernel, kernel } from '../../kernel/kernel.ts';
import type { SearchTask } from '../../kernel/kernelTask.ts';
import { pointEvaluator } from '../../kernel/pointEvaluator.ts';
import { Unprovable } from '../../kernel/unprovable.ts';
import type { KeptPoints } from '../../outcome/keptPoints.ts';
import type { Prepared } from '../../prepared/prepare.ts';
import type { Box } from '../boxes/box.ts';
import type { LineConditions } from './lineConditions.ts';

/** A system of which points are gone through. */
export interface SweptSystem {
  number: number;
  members: readonly number[];
  numberOf(parts: ArrayLike<number>): number;
}

/** Goes through all points of boxes with the kernels of a search. */
export interface KernelSweep {
  /** Turns to another chunk, whose points are offered to `kept`; forgets what passed. */
  begin(kept: KeptPoints): void;
  /**
   * Goes through a box of a system; false, and nothing done, where the kernel cannot. Points that do
   * not meet the conditions may be left out and not be counted.
   */
  one(system: SweptSystem, box: Box, conditions?: LineConditions): boolean;
  /** Goes through the same box of two systems; false, and nothing done, where the kernel cannot. */
  two(first: SweptSystem, second: SweptSystem, box: Box): boolean;
  /** How many points passed since the beginning of the chunk. */
  passed(): number;
  /** Whether it is worth while: too many points that a kernel is not sure of make it slow. */
  isWorthWhile(): boolean;
}

/** Conditions that a line is cut by where passes are not counted. */
export const conditionsOnLines = 3;
/** So many points that a kernel is not sure of, and this share of all, and another way is taken. */
const fewUncertain = 4096;
const mostUncertain = 0.03;

/** The kernels of a search, made as they are needed. */
export function kernelSweep(prepared: Prepared, task: SearchTask): KernelSweep {
  const { program, limits, scoreOutput, ranking, grid, plan } = prepared;
  const countsNothing = plan.specification.tally === 'none';
  const ofLines = { ...task, countsNothing, conditions: countsNothing ? conditionsOnLines : 0 };
  const nothing = new Float64Array(grid.components.max);
  const kernels = new Map<string, Kernel | null>();
  const all = pointEvaluator(prepared, [...program.outputs.keys()]);
  const score = pointEvaluator(prepared, [scoreOutput]);
  let kept: KeptPoints;
  let systems: readonly [SweptSystem, SweptSystem];
  let current: Kernel | null = null;
  /** The systems that the kernel at hand was turned to. */
  const entered = new Map<Kernel, readonly [SweptSystem, SweptSystem]>();
  let canonicallyPassed = 0;
  let uncertain = 0;
  let swept = 0;

  function passes(values: Float64Array): boolean {
    for (const { output, least, greatest } of limits) {
      const value = values[output]!;
      if (!(value >= least && value <= greatest)) return false;
    }
    return true;
  }

  function take(lane: 0 | 1, isUncertain: boolean, _index: number, amounts: Int32Array): void {
    const { number, members, numberOf } = systems[lane];
    let found: number;
    if (isUncertain) {
      uncertain += 1;
      const values = all(members, amounts);
      if (!passes(values)) return;
      canonicallyPassed += 1;
      found = values[scoreOutput]!;
    } else {
      found = score(members, amounts)[0]!;
    }
    if (task.score === null) return;
    kept.enter(number);
    kept.offer(Number.isFinite(found) ? found : Number.NaN, numberOf(amounts));
  }

  function kernelFor(elements: number, lanes: Lanes): Kernel | null {
    const key = `${elements} ${lanes}`;
    let known = kernels.get(key);
    if (known === undefined) {
      try {
        known = kernel(prepared, lanes === 'line' ? ofLines : task, elements, lanes, take);
      } catch (error) {
        if (!(error instanceof Unprovable)) throw error;
        known = null;
      }
      kernels.set(key, known);
    }
    return known;
  }

  function enter(first: SweptSystem, second: SweptSystem, lanes: Lanes): boolean {
    const elements = first.members.length;
    current = elements < 2 ? null : kernelFor(elements, lanes);
    if (current === null) return false;
    systems = [first, second];
    const before = entered.get(current);
    if (before?.[0] === first && before[1] === second) return true;
    entered.delete(current);
    if (!current.enter([first.members, second.members])) return false;
    entered.set(current, systems);
    return true;
  }

  function setConditions({ low, high }: Box, conditions?: LineConditions): void {
    for (let at = 0; at < ofLines.conditions; at += 1) {
      if (conditions === undefined || at >= conditions.count) {
        current!.setCondition(at, 0, nothing, low, high);
        continue;
      }
      const slopes = conditions.slopes[at]!;
      let constant = conditions.constants[at]!;
      for (let place = 0; place < low.length; place += 1) constant -= slopes[place]! * low[place]!;
      current!.setCondition(at, constant, slopes, low, high);
    }
  }

  function sweep({ low, high }: Box, lanes: number): void {
    const worst = kept.worstKey();
    current!.setCutOff(
      worst === Number.POSITIVE_INFINITY ? null : ranking.prefer === 'high' ? -worst : worst,
    );
    current!.startAt(0);
    swept += lanes * current!.sweep(low, high);
  }

  return {
    begin(next) {
      kept = next;
      canonicallyPassed = 0;
      for (const one of kernels.values()) one?.takeCounts();
    },
    one(system, box, conditions) {
      if (!enter(system, system, 'line')) return false;
      setConditions(box, conditions);
      sweep(box, 1);
      return true;
    },
    two(first, second, box) {
      if (!enter(first, second, 'systems')) return false;
      sweep(box, 2);
      return true;
    },
    passed() {
      let passed = canonicallyPassed;
      for (const one of kernels.values()) passed += one?.takeCounts().at(-1) ?? 0;
      canonicallyPassed = passed;
      return passed;
    },
    isWorthWhile: () => uncertain <= fewUncertain || uncertain <= mostUncertain * swept,
  };
}
