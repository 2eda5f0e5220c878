import type { Chunk, Outcome } from '@tiegel/contract';
import { wholeOf } from '../grid/grid.ts';
import type { PointNumbering } from '../grid/pointNumbering.ts';
import { kernelTask } from '../kernel/kernelTask.ts';
import { type KeptPoints, keptPoints } from '../outcome/keptPoints.ts';
import type { Prepared } from '../prepared/prepare.ts';
import type { ScoreOptions } from '../scoring.ts';
import { type Box, firstPointOf, halvesOf, pointsIn, roomIn, widestOf } from './box.ts';
import { conditionsOnLines, type KernelSweep, kernelSweep, type SweptSystem } from './kernelSweep.ts';
import { knownNumberings } from './knownNumberings.ts';
import { type LineConditions, lineConditions } from './lineConditions.ts';
import { type Narrowing, narrowing } from './narrowing.ts';
import { openQuestion } from './openQuestion.ts';
import { type PointLook, pointLook } from './pointLook.ts';
import { type QuickerWay, quickerWay } from './quickerWay.ts';
import { rangeBoxes } from './rangeBoxes.ts';
import { type RegionTests, regionTests } from './regionTests.ts';
import { type Sieve, sieve } from './sieve.ts';
import { type WholeBox, wholeBoxes } from './wholeBoxes.ts';

/** A box of so many points is gone through rather than halved. */
const pointsToSweep = 2048;
/** A box that was made narrower is bounded anew when this share of its room is left, or less. */
const worthBounding = 0.6;
/** How often the search asks whether to stop: after so many boxes. */
const turnsBetweenQuestions = 32;

/** A kernel goes through a box, or through two systems with the same points, of so many times as many. */
const kernelPace = 4;
/** And where it counts nothing, since most lines of a box are left then. */
const quickPace = 8;

/** A system whose points are not all decided. */
interface OpenSystem {
  number: number;
  bestKey: number;
}

/** So many systems wait for one with the same points, and further ones go alone. */
const mostWaiting = 256;

/** A system that waits for another one with the same points. */
type Waiting = OpenSystem & SweptSystem;

/**
 * Scores a chunk of a search that does not count each limit (tally all or none): boxes of the grid
 * that surely cannot change the outcome are left out. Systems come in the order of the best key
 * that their bounds allow; a box is left when no point of it passes or none can be kept, halved
 * when it is large, and gone through line by line when it is small (see Sieve). With tally all, boxes that pass whole are counted
 * by their number of points.
 *
 * The outcome equals that of the reference scorer digit for digit.
 *
 * @param mostToSweep a box of so many points is gone through rather than halved
 */
export function scorePruned(
  prepared: Prepared,
  chunk: Chunk,
  options: ScoreOptions,
  mostToSweep = pointsToSweep,
): Outcome | null {
  const { ranking, systems, grid, plan } = prepared;
  const counting = plan.specification.tally === 'all';
  const { look: lookFor, numberings, ...shared } = partsOf(prepared);
  const { tests, sweep, boxOf } = shared;
  const kept = keptPoints(ranking, options.cutOff);
  const look = lookFor(kept);
  sweep?.begin(kept);
  const search = { ...shared, look, kept, counting, options, mostToSweep };
  const pairs = new Map<WholeBox, Waiting>();
  const isWhole = chunk.firstPoint === 0 && chunk.endPoint === null;
  const mostInPair = sweep && isWhole && ranking.keepPerSystem === 0 ? kernelPace * mostToSweep : 0;
  const question = openQuestion();
  let passed = 0;

  const found = openSystems(prepared, chunk, search);
  if (found === null) return null;
  for (const [turn, open] of found.open.entries()) {
    options.progress?.(turn / found.open.length);
    if (isIdle(open)) continue;
    if (options.stopped?.()) return null;
    if (options.sharedKey) kept.exchange(options.sharedKey);
    const members = systems.systemAt(open.number);
    const whole = boxOf(members);
    const inPairs = whole.points <= mostInPair && sweep!.isWorthWhile();
    if (!inPairs || question.isDue(whole.points)) {
      tests.enter(members, whole.box!.total);
      tests.bound(whole.box!);
      const isClosed = tests.stillOpen(tests.all) === null;
      if (inPairs) question.answered(isClosed);
      if (isClosed) continue;
    }
    const system = { ...open, members, numberOf: numberings(members).numberOf };
    if (inPairs && sweepInPairs(system, whole)) continue;
    if (!searchSystem(system)) return null;
  }
  for (const [whole, one] of pairs) {
    if (!isIdle(one) && !sweep!.one(one, whole.box!) && !searchSystem(one)) return null;
  }
  passed += sweep?.passed() ?? 0;
  if (options.sharedKey) kept.exchange(options.sharedKey);

  /** Whether no point of a system can be kept, and none is counted. */
  function isIdle({ bestKey, number }: OpenSystem): boolean {
    return !counting && ranking.keepPerSystem === 0 && kept.excludes(bestKey, number, 0);
  }

  /** Goes through a whole system, together with another one that has the same points; false where the kernel cannot. */
  function sweepInPairs(system: Waiting, whole: WholeBox): boolean {
    const other = pairs.get(whole);
    if (other === undefined || isIdle(other)) {
      if (pairs.size >= mostWaiting) return sweep!.one(system, whole.box!);
      pairs.set(whole, system);
      return true;
    }
    if (!sweep!.two(other, system, whole.box!)) return false;
    pairs.delete(whole);
    return true;
  }

  /** Searches a system by itself; false when stopped. */
  function searchSystem(system: SweptSystem): boolean {
    const { number, members, numberOf } = system;
    const total = wholeOf(grid, members.length);
    kept.enter(number);
    tests.enter(members, total);
    look.enter(members, total, numberOf);
    for (const box of rangeBoxes(grid, members, chunk.firstPoint, chunk.endPoint)) {
      const here = searchBox(box, system, search);
      if (here === null) return false;
      passed += here;
    }
    return true;
  }

  return {
    points: found.points,
    ...{ passed: counting ? passed : null, passedEach: null, outside: null },
    ...kept.finish(),
  };
}

interface Search extends Omit<Parts, 'look' | 'numberings'> {
  look: PointLook;
  kept: KeptPoints;
  counting: boolean;
  options: ScoreOptions;
  mostToSweep: number;
}

/** The systems by the best key that bounds of the whole system allow, best first, and how many points they all have. */
function openSystems(
  { systems, ranking }: Prepared,
  { firstSystem, endSystem, firstPoint, endPoint }: Chunk,
  { tests, boxOf, counting, options, kept }: Search,
): { open: OpenSystem[]; points: number } | null {
  const open: OpenSystem[] = [];
  const isIdle = (bestKey: number, number: number) =>
    !counting && ranking.keepPerSystem === 0 && kept.excludes(bestKey, number, 0);
  const system = systems.systemAt(firstSystem);
  let points = 0;

  /** Bounds the system at hand. */
  function take(number: number): void {
    const whole = boxOf(system);
    if (whole.box === null) return;
    points += (endPoint ?? whole.points) - firstPoint;
    tests.enter(system, whole.box.total);
    tests.bound(whole.box);
    const bestKey = tests.bestKey();
    if (!isIdle(bestKey, number)) open.push({ number, bestKey });
  }

  for (let number = firstSystem; number < endSystem; number += 1, systems.advance(system)) {
    if ((number & 255) === 0 && options.stopped?.()) return null;
    take(number);
  }
  open.sort((one, other) =>
    one.bestKey === other.bestKey ? one.number - other.number : one.bestKey < other.bestKey ? -1 : 1,
  );
  return { open, points };
}

/** A box that is not decided. */
interface OpenBox {
  box: Box;
  /** The limits that not all of its points meet. */
  limits: readonly number[];
  bestKey: number;
}

/** Searches a box of the system entered; how many points pass, as far as they are counted. Null when stopped. */
function searchBox(whole: Box, system: SweptSystem, search: Search): number | null {
  const { tests, sweep } = search;
  tests.bound(whole);
  const one = { box: whole, limits: tests.all, bestKey: tests.bestKey() };
  return searchOpen(one, system, search, sweep?.isWorthWhile() === true);
}

/** Searches an open box, its parts by the kernel once they are small enough for that, or else line by line once they are still smaller. */
function searchOpen(first: OpenBox, system: SweptSystem, search: Search, byKernel: boolean): number | null {
  const { tests, look, counting, options, mostToSweep, ways } = search;
  const open: OpenBox[] = [];
  let passed = 0;

  /** Puts a box among the open ones unless it is decided; where nothing is counted, what can be cut off is left. */
  function add(given: Box, limitsBefore: readonly number[]): void {
    let [box, before] = [given, limitsBefore];
    for (;;) {
      tests.bound(box);
      const bestKey = tests.bestKey();
      const dull = isDull(box, bestKey, system, search);
      if (dull && !counting) return;
      const limits = tests.stillOpen(before);
      if (limits === null) return;
      if (counting) {
        if (dull && limits.length === 0) passed += pointsIn(box);
        else open.push({ box, limits, bestKey });
        return;
      }
      const part = narrowPart(box, limits, search);
      if (part === null) return;
      if (part === box || roomIn(part) > worthBounding * roomIn(box)) {
        open.push({ box: part, limits, bestKey });
        return;
      }
      [box, before] = [part, limits];
    }
  }

  add(first.box, first.limits);
  let turn = 0;
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    turn += 1;
    if (turn % turnsBetweenQuestions === 0 && options.stopped?.()) return null;
    const { box, limits, bestKey } = one;
    const dull = isDull(box, bestKey, system, search);
    if (dull && !counting) continue;
    const points = pointsIn(box);
    if (dull && limits.length === 0) {
      passed += points;
    } else if (byKernel && points <= (counting ? kernelPace : quickPace) * mostToSweep) {
      const isKernelNext = counting || ways.next() === 'kernel';
      const isDone = isKernelNext && sweepBox(one, system, search);
      const here = isDone ? 0 : searchOpen(one, system, search, false);
      if (here === null) return null;
      passed += here;
      if (!counting) ways.done(points);
    } else if (points <= mostToSweep) {
      passed += goThrough(one, dull, search);
    } else {
      const length = open.length;
      for (const half of halvesOf(box, widestOf(box))) add(half, limits);
      betterLast(open, length);
    }
  }
  return passed + look.finish();
}

/** Goes through the points of a box with the kernel; false where it cannot. */
function sweepBox({ box, limits }: OpenBox, system: SweptSystem, search: Search): boolean {
  const { tests, kept, counting, sweep, conditions } = search;
  if (sweep === null) return false;
  if (counting) return sweep.one(system, box);
  tests.bound(box);
  tests.fill(conditions, limits, kept.worstKey());
  return sweep.one(system, box, conditions);
}

/** The part of the box bounded last that points to be kept may lie in; null where there is none. */
function narrowPart(box: Box, limits: readonly number[], { tests, kept, narrower, all }: Search): Box | null {
  tests.fill(all, limits, kept.worstKey());
  return narrower.narrowed(box, all);
}

/** Goes through the points of a box line by line; how many pass without having been looked at. */
function goThrough({ box, limits }: OpenBox, dull: boolean, search: Search): number {
  const { tests, lines, look, kept, counting } = search;
  tests.bound(box);
  tests.fill(lines, limits, dull ? Number.NEGATIVE_INFINITY : kept.worstKey());
  return lines.go(box, counting, look.take);
}

/** Whether no point of a box can be kept. */
function isDull(box: Box, bestKey: number, { number, numberOf }: SweptSystem, { kept }: Search): boolean {
  const worst = kept.worstKey();
  if (bestKey !== worst) return bestKey > worst;
  return kept.excludes(bestKey, number, numberOf(firstPointOf(box)));
}

/** Of two boxes added last the one with the better key is looked at first. */
function betterLast(open: OpenBox[], from: number): void {
  if (open.length - from < 2 || open[from]!.bestKey >= open[from + 1]!.bestKey) return;
  open.push(...open.splice(from, 1));
}

/** What a plan's chunks share. */
interface Parts {
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

const parts = new WeakMap<Prepared, Parts>();

function partsOf(prepared: Prepared): Parts {
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
