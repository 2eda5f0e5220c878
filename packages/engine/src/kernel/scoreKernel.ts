import type { Chunk, Outcome } from '@tiegel/contract';
import { scoreBlocks } from '../blocks/scoreBlocks.ts';
import { boundsKey } from '../grid/boundsKey.ts';
import { pointNumbering } from '../grid/pointNumbering.ts';
import { type KeptPoints, keptPoints } from '../outcome/keptPoints.ts';
import { mergeOutcomes } from '../outcome/mergeOutcomes.ts';
import type { Prepared } from '../prepared/prepare.ts';
import { type Box, firstPointOf, tightBox } from '../pruning/boxes/box.ts';
import { rangeBoxes } from '../pruning/boxes/rangeBoxes.ts';
import type { ScoreOptions } from '../scoring.ts';
import { ChunkCounts } from './chunkCounts.ts';
import type { Lanes } from './code/frame.ts';
import { type Kernel, kernel } from './kernel.ts';
import { kernelTask, type SearchTask } from './kernelTask.ts';
import { type EvaluatePoint, pointEvaluator } from './pointEvaluator.ts';
import { sweepInCalls } from './sweepInCalls.ts';
import { systemOrder } from './systemOrder.ts';
import { Unprovable } from './unprovable.ts';

/**
 * Scores a chunk with a kernel generated for this search (see README.md). Its outcome equals that of
 * the reference scorer digit for digit: what the kernel is not sure of, and the score of what may be
 * kept, come from the canonical evaluator.
 *
 * What no kernel is made for (see kernelTask) is scored by scoreBlocks, and so are systems of one
 * element and searches of which too many points lie where a kernel is not sure.
 */
export function scoreKernel(prepared: Prepared, chunk: Chunk, options: ScoreOptions): Outcome | null {
  const search = searchOf(prepared);
  if (search === null || search.declined) return scoreBlocks(prepared, chunk, options);
  return search.score(chunk, options);
}

const searches = new WeakMap<Prepared, KernelSearch | null>();

function searchOf(prepared: Prepared): KernelSearch | null {
  let search = searches.get(prepared);
  if (search === undefined) {
    const task = kernelTask(prepared);
    search = task && new KernelSearch(prepared, task);
    searches.set(prepared, search);
  }
  return search;
}

/** So many points that a kernel is not sure of, and this share of all, and the search is left to scoreBlocks. */
const fewUncertain = 4096;
const mostUncertain = 0.03;

/** One search with its kernels, which serve all its chunks. */
class KernelSearch {
  declined = false;
  private readonly prepared: Prepared;
  private readonly task: SearchTask;
  private readonly kernels = new Map<string, Kernel>();
  private readonly evaluateAll: EvaluatePoint;
  private readonly evaluateScore: EvaluatePoint;
  private readonly keyOf: (system: readonly number[]) => string;
  private readonly wholeBoxes = new Map<string, Box | null>();

  /** Of the chunk at hand. */
  private kept: KeptPoints;
  private systems: readonly [readonly number[], readonly number[]] = [[], []];
  private numbers: readonly [number, number] = [0, 0];
  private firstIndex = 0;
  private kernel: Kernel | null = null;
  private counts: ChunkCounts;

  constructor(prepared: Prepared, task: SearchTask) {
    const { limited, scoreOutput, grid, ranking } = prepared;
    this.prepared = prepared;
    this.task = task;
    this.keyOf = boundsKey(grid);
    this.kept = keptPoints(ranking, null);
    this.counts = new ChunkCounts(prepared, task);
    this.evaluateAll = pointEvaluator(prepared, [...limited.map((_, output) => output), scoreOutput]);
    this.evaluateScore = pointEvaluator(prepared, [scoreOutput]);
  }

  score(chunk: Chunk, options: ScoreOptions): Outcome | null {
    const { prepared } = this;
    const { ranking } = prepared;
    this.kept = keptPoints(ranking, options.cutOff);
    for (const one of this.kernels.values()) one.takeCounts();
    this.counts = new ChunkCounts(prepared, this.task);
    const left: Chunk[] = [];
    let points: number | null;
    try {
      points = this.sweepChunk(chunk, options, left);
    } catch (error) {
      if (!(error instanceof Unprovable)) throw error;
      this.declined = true;
      return scoreBlocks(prepared, chunk, options);
    }
    if (points === null) return null;
    this.counts.addCertain(this.kernels.values(), points);
    const { uncertain } = this.counts;
    if (uncertain > fewUncertain && uncertain > mostUncertain * points) this.declined = true;
    let outcome: Outcome = { points, ...this.counts.told(), ...this.kept.finish() };
    for (const one of left) {
      const other = scoreBlocks(prepared, one, options);
      if (other === null) return null;
      outcome = mergeOutcomes(outcome, other, ranking);
    }
    return outcome;
  }

  /** Sweeps all systems that a kernel can; the others are left. Returns the points swept, null when stopped. */
  private sweepChunk(chunk: Chunk, { stopped }: ScoreOptions, left: Chunk[]): number | null {
    const { ranking, systems } = this.prepared;
    if (stopped?.()) return null;
    const isStopped = (): boolean => stopped?.() ?? false;
    const { firstSystem, endSystem, firstPoint, endPoint } = chunk;
    const whole = firstPoint === 0 && endPoint === null;
    const alone = !whole || ranking.keepPerSystem > 0;
    const waiting = new Map<string, { number: number; system: readonly number[] }>();
    let points = 0;
    const add = (more: number | null): boolean => {
      points += more ?? 0;
      return more !== null;
    };
    if (firstSystem === endSystem) this.makeReady(alone);
    const order = systemOrder(this.prepared, chunk, this.evaluateScore);
    let system: number[] = [];
    // A loop, for a generator stays in the interpreter until it is called anew.
    for (let turn = 0; turn < endSystem - firstSystem; turn += 1) {
      const number = firstSystem + (order?.[turn] ?? turn);
      if (order || turn === 0) system = systems.systemAt(number);
      else systems.advance(system);
      if (system.length < 2) {
        leave(left, chunk, number);
        continue;
      }
      if (!whole) {
        if (!add(this.sweepPart(system, number, firstPoint, endPoint, left, isStopped))) return null;
        continue;
      }
      const key = this.keyOf(system);
      const box = this.wholeBox(key, system);
      if (box === null) continue;
      const own = [...system];
      const other = alone ? undefined : waiting.get(key);
      if (alone) {
        if (!add(this.sweepAlone(own, number, box, left, isStopped))) return null;
      } else if (other === undefined) {
        waiting.set(key, { number, system: own });
      } else {
        waiting.delete(key);
        const both = this.sweepTwo([other.system, own], [other.number, number], box, isStopped);
        if (both === 'left') {
          if (!add(this.sweepAlone(other.system, other.number, box, left, isStopped))) return null;
          if (!add(this.sweepAlone(own, number, box, left, isStopped))) return null;
        } else if (!add(both)) return null;
      }
    }
    for (const { number, system: last } of waiting.values()) {
      const box = this.wholeBox(this.keyOf(last), last);
      if (!add(this.sweepAlone(last, number, box!, left, isStopped))) return null;
    }
    return points;
  }

  private wholeBox(key: string, system: readonly number[]): Box | null {
    let known = this.wholeBoxes.get(key);
    if (known === undefined) {
      const { lowest, highest } = this.prepared.grid;
      known = tightBox(
        system.map((element) => lowest[element]!),
        system.map((element) => highest[element]!),
        this.task.total,
      );
      if (this.wholeBoxes.size > 10_000) this.wholeBoxes.clear();
      this.wholeBoxes.set(key, known);
    }
    return known;
  }

  private sweepTwo(
    systems: readonly [readonly number[], readonly number[]],
    numbers: readonly [number, number],
    box: Box,
    stopped: () => boolean,
  ): number | null | 'left' {
    if (!this.enter(systems, numbers, 'systems')) return 'left';
    const points = this.sweepBox(box, 0, stopped);
    return points === null ? null : 2 * points;
  }

  private sweepAlone(
    system: readonly number[],
    number: number,
    box: Box,
    left: Chunk[],
    stopped: () => boolean,
  ): number | null {
    if (!this.enter([system, system], [number, number], 'line')) {
      leave(left, { firstPoint: 0, endPoint: null }, number);
      return 0;
    }
    return this.sweepBox(box, 0, stopped);
  }

  /** Some points of a system. */
  private sweepPart(
    system: readonly number[],
    number: number,
    first: number,
    end: number | null,
    left: Chunk[],
    stopped: () => boolean,
  ): number | null {
    const { grid } = this.prepared;
    const own = [...system];
    if (!this.enter([own, own], [number, number], 'line')) {
      leave(left, { firstPoint: first, endPoint: end }, number);
      return 0;
    }
    const numbering = pointNumbering(grid, own);
    let points = 0;
    for (const box of rangeBoxes(grid, own, first, end)) {
      const here = this.sweepBox(box, numbering.numberOf(firstPointOf(box)), stopped);
      if (here === null) return null;
      points += here;
    }
    return points;
  }

  private enter(
    systems: readonly [readonly number[], readonly number[]],
    numbers: readonly [number, number],
    lanes: Lanes,
  ): boolean {
    const one = this.kernelFor(systems[0].length, lanes);
    this.kernel = one;
    this.systems = systems;
    this.numbers = numbers;
    this.kept.enter(numbers[0]);
    return one.enter(systems);
  }

  private kernelFor(elements: number, lanes: Lanes): Kernel {
    const key = `${elements} ${lanes}`;
    let one = this.kernels.get(key);
    if (one === undefined) {
      one = kernel(
        ...([this.prepared, this.task, elements, lanes] as const),
        (lane, uncertain, index, amounts) => this.take(lane, uncertain, index, amounts),
      );
      this.kernels.set(key, one);
    }
    return one;
  }

  /** Makes the kernel that most points of the search need. */
  private makeReady(alone: boolean): void {
    const { grid, systems } = this.prepared;
    if (systems.count > 0)
      this.kernelFor(grid.components.max, alone || systems.count === 1 ? 'line' : 'systems');
  }

  /** Sweeps a box of the systems entered, from the number of its first point on; how many points it has, null when stopped. */
  private sweepBox(box: Box, firstIndex: number, stopped: () => boolean): number | null {
    this.firstIndex = firstIndex;
    return sweepInCalls(box, (slice) => {
      this.renewCutOff();
      this.kernel!.startAt(0);
      const points = this.kernel!.sweep(slice.low, slice.high);
      this.firstIndex += points;
      return stopped() ? null : points;
    });
  }

  private renewCutOff(): void {
    const worst = this.kept.worstKey();
    const high = this.task.prefer === 'high';
    this.kernel!.setCutOff(worst === Number.POSITIVE_INFINITY ? null : high ? -worst : worst);
  }

  private take(lane: 0 | 1, uncertain: boolean, index: number, amounts: Int32Array): void {
    const system = this.systems[lane];
    const number = this.numbers[lane];
    const point = this.firstIndex + index;
    let score: number;
    if (uncertain) {
      const values = this.evaluateAll(system, amounts);
      if (!this.counts.addUncertain(values)) return;
      score = values.at(-1)!;
    } else {
      score = this.evaluateScore(system, amounts)[0]!;
    }
    if (this.task.score === null) return;
    this.kept.enter(number);
    this.kept.offer(Number.isFinite(score) ? score : Number.NaN, point);
  }
}

/** Adds a system, or the part of it, to what is left for another scorer. */
function leave(
  left: Chunk[],
  { firstPoint, endPoint }: Pick<Chunk, 'firstPoint' | 'endPoint'>,
  system: number,
): void {
  left.push({ ordinal: 0, firstSystem: system, endSystem: system + 1, firstPoint, endPoint, points: 0 });
}
