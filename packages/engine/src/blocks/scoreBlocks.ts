import type { Chunk, Outcome } from '@tiegel/contract';
import { wholeOf } from '../grid/grid.ts';
import { counted } from '../outcome/counted.ts';
import { type KeptPoints, keptPoints } from '../outcome/keptPoints.ts';
import { outsideOf } from '../outcome/outsideOf.ts';
import type { Prepared } from '../prepared/prepare.ts';
import { keyOf } from '../prepared/ranking.ts';
import type { ScoreOptions } from '../scoring.ts';
import { type BlockProgram, blockProgram } from './blockProgram.ts';
import { limitTests } from './limitTests.ts';
import { type SystemBlocks, systemBlocks } from './systemBlocks.ts';

/** Points computed at once: enough to make loops long, few enough for their arrays to stay in a core's cache. */
const capacity = 512;

/**
 * Scores a chunk with sums formed along a tree of prefixes and every step of the formulas as a
 * loop over a block of points (see PointBlock). Its outcome equals that of the reference scorer
 * digit for digit, since each point's value comes from the same operations in the same order.
 */
export function scoreBlocks(prepared: Prepared, chunk: Chunk, options: ScoreOptions): Outcome | null {
  const { grid, systems, limits, limited, ranking } = prepared;
  const { program, blocks } = partsOf(prepared);
  const mayLack = limited.map((_, output) => prepared.bounds[output]!.missing !== 'never');
  const tests = limitTests(limits, program.limited, mayLack, capacity);
  const kept = keptPoints(ranking, options.cutOff);
  const segments = newSegments();
  let filled = 0;
  let points = 0;
  let passed = 0;

  /** Scores what the places hold and empties them; false to stop. */
  function flush(): boolean {
    program.compute(filled);
    const passing = tests.test(filled);
    const scores = program.scores(tests.passing, passing);
    offer(kept, segments, tests.passing, scores, passing, ranking.prefer);
    if (ranking.front) offerToFront(kept, segments, tests.passing, scores, program.front, passing);
    points += filled;
    passed += passing;
    filled = 0;
    segments.count = 0;
    return !options.stopped?.();
  }

  const system = systems.systemAt(chunk.firstSystem);
  if (options.stopped?.()) return null;
  for (let number = chunk.firstSystem; number < chunk.endSystem; number += 1) {
    let point = chunk.firstPoint;
    let entered = false;
    const finished = blocks.visit(system, chunk.firstPoint, chunk.endPoint, (block) => {
      if (filled + block.count > capacity && !flush()) return false;
      if (!entered) program.enter(system, wholeOf(grid, system.length));
      entered = true;
      program.place(block, filled);
      filled += block.count;
      addSegment(segments, number, point, filled);
      point += block.count;
      return true;
    });
    if (!finished) return null;
    systems.advance(system);
  }
  if (filled > 0 && !flush()) return null;
  const outside = outsideOf(limited, tests.withoutValue);
  const { tally } = prepared.plan.specification;
  const counts = counted(tally, { passed, passedEach: tests.passedEach, outside });
  return { points, ...counts, ...kept.finish() };
}

/** Buffers and blocks serve all chunks of a plan. */
const prepared = new WeakMap<Prepared, { program: BlockProgram; blocks: SystemBlocks }>();

function partsOf(plan: Prepared): { program: BlockProgram; blocks: SystemBlocks } {
  let parts = prepared.get(plan);
  if (!parts) {
    const outputs = plan.limited.map((_, output) => output);
    parts = {
      program: blockProgram(
        plan.program,
        outputs,
        plan.scoreOutput,
        plan.grid.components.max,
        capacity,
        plan.frontOutputs,
      ),
      blocks: systemBlocks(plan.grid, capacity),
    };
    prepared.set(plan, parts);
  }
  return parts;
}

/** Which points the places hold: from place ends[k − 1] to ends[k] those of systems[k] from points[k] on. */
interface Segments {
  count: number;
  ends: Int32Array;
  systems: Float64Array;
  points: Float64Array;
}

function newSegments(): Segments {
  return {
    count: 0,
    ends: new Int32Array(capacity),
    systems: new Float64Array(capacity),
    points: new Float64Array(capacity),
  };
}

function addSegment(segments: Segments, system: number, point: number, end: number): void {
  const { count } = segments;
  segments.systems[count] = system;
  segments.points[count] = point;
  segments.ends[count] = end;
  segments.count += 1;
}

/** Offers the points that pass, unless it is clear that they cannot be kept. */
function offer(
  kept: KeptPoints,
  { ends, systems, points }: Segments,
  passing: Int32Array,
  scores: Float64Array,
  count: number,
  prefer: 'high' | 'low',
): void {
  let segment = -1;
  let firstPlace = 0;
  let end = 0;
  let worst = Number.POSITIVE_INFINITY;
  for (let at = 0; at < count; at += 1) {
    const place = passing[at]!;
    if (place >= end) {
      while (place >= end) {
        firstPlace = end;
        segment += 1;
        end = ends[segment]!;
      }
      kept.enter(systems[segment]!);
      worst = kept.worstKey();
    }
    const score = Number.isFinite(scores[at]) ? scores[at]! : Number.NaN;
    if (keyOf(score, prefer) > worst) continue;
    kept.offer(score, points[segment]! + place - firstPlace);
    worst = kept.worstKey();
  }
}

/** Offers every point that passes to the front. */
function offerToFront(
  kept: KeptPoints,
  { ends, systems, points }: Segments,
  passing: Int32Array,
  scores: Float64Array,
  columns: readonly Float64Array[],
  count: number,
): void {
  const values = new Float64Array(columns.length);
  let segment = 0;
  let firstPlace = 0;
  for (let at = 0; at < count; at += 1) {
    const place = passing[at]!;
    while (place >= ends[segment]!) {
      firstPlace = ends[segment]!;
      segment += 1;
    }
    for (let column = 0; column < columns.length; column += 1) values[column] = columns[column]![at]!;
    const score = Number.isFinite(scores[at]) ? scores[at]! : Number.NaN;
    kept.offerToFront(systems[segment]!, score, points[segment]! + place - firstPlace, values);
  }
}
