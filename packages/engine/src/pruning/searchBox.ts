import { type Box, firstPointOf, halvesOf, pointsIn, roomIn, widestOf } from './boxes/box.ts';
import type { SweptSystem } from './cutting/kernelSweep.ts';
import type { PrunedSearch } from './prunedSearch.ts';

/** A box that was made narrower is bounded anew when this share of its room is left, or less. */
const worthBounding = 0.6;
/** How often the search asks whether to stop: after so many boxes. */
const turnsBetweenQuestions = 32;

/** A kernel goes through a box, or through two systems with the same points, of so many times as many. */
export const kernelPace = 4;
/** And where it counts nothing, since most lines of a box are left then. */
const quickPace = 8;

/** A box that is not decided. */
interface OpenBox {
  box: Box;
  /** The limits that not all of its points meet. */
  limits: readonly number[];
  bestKey: number;
}

/** Searches a box of the system entered; how many points pass, as far as they are counted. Null when stopped. */
export function searchBox(whole: Box, system: SweptSystem, search: PrunedSearch): number | null {
  const { tests, sweep } = search;
  tests.bound(whole);
  const one = { box: whole, limits: tests.all, bestKey: tests.bestKey() };
  return searchOpen(one, system, search, sweep?.isWorthWhile() === true);
}

/** Searches an open box, its parts by the kernel once they are small enough for that, or else line by line once they are still smaller. */
function searchOpen(
  first: OpenBox,
  system: SweptSystem,
  search: PrunedSearch,
  byKernel: boolean,
): number | null {
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
function sweepBox({ box, limits }: OpenBox, system: SweptSystem, search: PrunedSearch): boolean {
  const { tests, kept, counting, sweep, conditions } = search;
  if (sweep === null) return false;
  if (counting) return sweep.one(system, box);
  tests.bound(box);
  tests.fill(conditions, limits, kept.worstKey());
  return sweep.one(system, box, conditions);
}

/** The part of the box bounded last that points to be kept may lie in; null where there is none. */
function narrowPart(
  box: Box,
  limits: readonly number[],
  { tests, kept, narrower, all }: PrunedSearch,
): Box | null {
  tests.fill(all, limits, kept.worstKey());
  return narrower.narrowed(box, all);
}

/** Goes through the points of a box line by line; how many pass without having been looked at. */
function goThrough({ box, limits }: OpenBox, dull: boolean, search: PrunedSearch): number {
  const { tests, lines, look, kept, counting } = search;
  tests.bound(box);
  tests.fill(lines, limits, dull ? Number.NEGATIVE_INFINITY : kept.worstKey());
  return lines.go(box, counting, look.take);
}

/** Whether no point of a box can be kept. */
function isDull(
  box: Box,
  bestKey: number,
  { number, numberOf }: SweptSystem,
  { kept }: PrunedSearch,
): boolean {
  const worst = kept.worstKey();
  if (bestKey !== worst) return bestKey > worst;
  return kept.excludes(bestKey, number, numberOf(firstPointOf(box)));
}

/** Of two boxes added last the one with the better key is looked at first. */
function betterLast(open: OpenBox[], from: number): void {
  if (open.length - from < 2 || open[from]!.bestKey >= open[from + 1]!.bestKey) return;
  open.push(...open.splice(from, 1));
}
