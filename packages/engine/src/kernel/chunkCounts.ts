import { type Counted, counted } from '../outcome/counted.ts';
import { outsideOf } from '../outcome/outsideOf.ts';
import type { Prepared } from '../prepared/prepare.ts';
import type { Kernel } from './kernel.ts';
import type { SearchTask } from './kernelTask.ts';

/** Counts the points of one chunk: those that the kernels were sure of, and those that went to the canonical evaluator. */
export class ChunkCounts {
  /** So many points no kernel was sure of. */
  uncertain = 0;
  private readonly prepared: Prepared;
  private readonly task: SearchTask;
  private passed = 0;
  private readonly passedEach: number[];
  private readonly withoutValue: number[];

  constructor(prepared: Prepared, task: SearchTask) {
    this.prepared = prepared;
    this.task = task;
    this.passedEach = prepared.limits.map(() => 0);
    this.withoutValue = prepared.limited.map(() => 0);
  }

  /** Counts an uncertain point by its canonical values; whether it meets all limits. */
  addUncertain(values: Float64Array): boolean {
    const { limits, limited } = this.prepared;
    this.uncertain += 1;
    for (const output of limited.keys())
      if (!Number.isFinite(values[output])) this.withoutValue[output]! += 1;
    let passes = true;
    for (const [limit, { output, least, greatest }] of limits.entries()) {
      const value = values[output]!;
      if (value >= least && value <= greatest) this.passedEach[limit]! += 1;
      else passes = false;
    }
    if (passes) this.passed += 1;
    return passes;
  }

  /** Adds what the kernels counted, out of so many points swept altogether. */
  addCertain(kernels: Iterable<Kernel>, points: number): void {
    const { limits, countedOutputs } = this.task;
    const counts = new Array<number>(limits.length + countedOutputs.length + 1).fill(0);
    for (const one of kernels) {
      for (const [at, count] of one.takeCounts().entries()) counts[at]! += count;
    }
    for (const at of limits.keys()) this.passedEach[at]! += counts[at]!;
    for (const [at, output] of countedOutputs.entries()) {
      this.withoutValue[output]! += points - this.uncertain - counts[limits.length + at]!;
    }
    this.passed += counts.at(-1)!;
  }

  /** As the specification asks for them. */
  told(): Counted {
    const { plan, limited } = this.prepared;
    const outside = outsideOf(limited, this.withoutValue);
    return counted(plan.specification.tally, {
      ...{ passed: this.passed, passedEach: this.passedEach, outside },
    });
  }
}
