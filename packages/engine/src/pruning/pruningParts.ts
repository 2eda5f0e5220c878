import type { PointNumbering } from '../grid/pointNumbering.ts';
import { kernelTask } from '../kernel/kernelTask.ts';
import type { KeptPoints } from '../outcome/keptPoints.ts';
import type { Prepared } from '../prepared/prepare.ts';
import { type WholeBox, wholeBoxes } from './boxes/wholeBoxes.ts';
import { conditionsOnLines, type KernelSweep, kernelSweep } from './cutting/kernelSweep.ts';
import { type LineConditions, lineConditions } from './cutting/lineConditions.ts';
import { type Narrowing, narrowing } from './cutting/narrowing.ts';
import { type PointLook, pointLook } from './cutting/pointLook.ts';
import { type Sieve, sieve } from './cutting/sieve.ts';
import { knownNumberings } from './knownNumberings.ts';
import { type RegionTests, regionTests } from './limits/regionTests.ts';
import { type QuickerWay, quickerWay } from './quickerWay.ts';

/** What a plan's chunks share. */
export interface PruningParts {
  tests: RegionTests;
  lines: Sieve;
  look: (kept: KeptPoints) => PointLook;
  numberings: (system: readonly number[]) => PointNumbering;
  boxOf: (system: readonly number[]) => WholeBox;
  /** What the kernel cuts lines by, and what boxes are cut by. */
  conditions: LineConditions;
  all: LineConditions;
  narrower: Narrowing;
  ways: QuickerWay<'kernel' | 'lines'>;
  /** Null where no kernel is made. */
  sweep: KernelSweep | null;
}

const parts = new WeakMap<Prepared, PruningParts>();

/** Made when a plan's first chunk comes. */
export function pruningParts(prepared: Prepared): PruningParts {
  let known = parts.get(prepared);
  if (!known) {
    const { grid, limits } = prepared;
    const task = kernelTask(prepared);
    known = {
      tests: regionTests(prepared, task),
      sweep: task && kernelSweep(prepared, task),
      lines: sieve(grid.components.max, 2 * limits.length + 1),
      look: pointLook(prepared),
      numberings: knownNumberings(grid),
      boxOf: wholeBoxes(grid),
      ways: quickerWay<'kernel' | 'lines'>('kernel', 'lines'),
      conditions: lineConditions(conditionsOnLines, grid.components.max),
      all: lineConditions(2 * limits.length + 1, grid.components.max),
      narrower: narrowing(grid.components.max),
    };
    parts.set(prepared, known);
  }
  return known;
}
