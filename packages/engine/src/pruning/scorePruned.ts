import type { Chunk, Outcome } from '@tiegel/contract';
import { wholeOf } from '../grid.ts';
import { type KeptPoints, keptPoints } from '../keptPoints.ts';
import type { PointNumbering } from '../pointNumbering.ts';
import type { Prepared } from '../prepare.ts';
import type { ScoreOptions } from '../scoring.ts';
import { type Box, firstPointOf, halvesOf, pointsIn, widestOf } from './box.ts';
import { knownNumberings } from './knownNumberings.ts';
import { type PointLook, pointLook } from './pointLook.ts';
import { rangeBoxes } from './rangeBoxes.ts';
import { type RegionTests, regionTests } from './regionTests.ts';
import { type Sieve, sieve } from './sieve.ts';

/** A box of so many points is gone through rather than halved. */
const pointsToSweep = 2048;
/** How often the search asks whether to stop: after so many boxes. */
const turnsBetweenQuestions = 32;

/** A system whose points are not all decided. */
interface OpenSystem {
  number: number;
  bestKey: number;
}

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
  const { tests, lines, look: lookFor, numberings } = partsOf(prepared);
  const kept = keptPoints(ranking, options.cutOff);
  const look = lookFor(kept);
  const search = { tests, lines, look, kept, counting, options, mostToSweep };
  let passed = 0;

  const found = openSystems(prepared, chunk, search);
  if (found === null) return null;
  passed += found.passed;
  for (const [turn, { number, bestKey }] of found.open.entries()) {
    options.progress?.(turn / found.open.length);
    if (!counting && ranking.keepPerSystem === 0 && kept.excludes(bestKey, number, 0)) continue;
    if (options.stopped?.()) return null;
    if (options.sharedKey) kept.exchange(options.sharedKey);
    const system = systems.systemAt(number);
    const total = wholeOf(grid, system.length);
    kept.enter(number);
    tests.enter(system, total);
    const { numberOf } = numberings(system);
    look.enter(system, total, numberOf);
    for (const box of rangeBoxes(grid, system, chunk.firstPoint, chunk.endPoint)) {
      const here = searchBox(box, { number, numberOf }, search);
      if (here === null) return null;
      passed += here;
    }
  }
  if (options.sharedKey) kept.exchange(options.sharedKey);
  return {
    points: found.points,
    ...{ passed: counting ? passed : null, passedEach: null, outside: null },
    ...kept.finish(),
  };
}

interface Search {
  tests: RegionTests;
  lines: Sieve;
  look: PointLook;
  kept: KeptPoints;
  counting: boolean;
  options: ScoreOptions;
  mostToSweep: number;
}

/** The systems that bounds of the whole system leave open, best first, and how many points pass in the others. */
function openSystems(
  { systems, grid, ranking }: Prepared,
  { firstSystem, endSystem, firstPoint, endPoint }: Chunk,
  { tests, counting, options }: Search,
): { open: OpenSystem[]; points: number; passed: number } | null {
  const open: OpenSystem[] = [];
  const nothingKept = ranking.keep === 0 && ranking.keepPerSystem === 0;
  const system = systems.systemAt(firstSystem);
  let points = 0;
  let passed = 0;
  for (let number = firstSystem; number < endSystem; number += 1, systems.advance(system)) {
    if ((number & 255) === 0 && options.stopped?.()) return null;
    tests.enter(system, wholeOf(grid, system.length));
    let bestKey: number | null = null;
    let decided = 0;
    for (const box of rangeBoxes(grid, system, firstPoint, endPoint)) {
      const here = pointsIn(box);
      points += here;
      tests.bound(box);
      const limitsOpen = tests.stillOpen(tests.all);
      if (limitsOpen === null) continue;
      if (limitsOpen.length === 0 && counting && nothingKept) decided += here;
      else bestKey = Math.min(bestKey ?? Number.POSITIVE_INFINITY, tests.bestKey());
    }
    // A system with a box left open is searched whole, its decided boxes once more.
    if (bestKey === null) passed += decided;
    else open.push({ number, bestKey });
  }
  open.sort((one, other) =>
    one.bestKey === other.bestKey ? one.number - other.number : one.bestKey < other.bestKey ? -1 : 1,
  );
  return { open, points, passed };
}

/** A box that is not decided. */
interface OpenBox {
  box: Box;
  /** The limits that not all of its points meet. */
  limits: readonly number[];
  bestKey: number;
}

/** A system by its number, and the numbers of its points. */
interface Entered {
  number: number;
  numberOf: PointNumbering['numberOf'];
}

/** Searches a box of the system entered; how many points pass, as far as they are counted. Null when stopped. */
function searchBox(whole: Box, system: Entered, search: Search): number | null {
  const { tests, look, counting, options, mostToSweep } = search;
  const open: OpenBox[] = [];
  let passed = 0;

  /** Puts a box among the open ones unless it is decided. */
  function add(box: Box, limitsBefore: readonly number[]): void {
    tests.bound(box);
    const bestKey = tests.bestKey();
    const dull = isDull(box, bestKey, system, search);
    if (dull && !counting) return;
    const limits = tests.stillOpen(limitsBefore);
    if (limits === null) return;
    if (dull && limits.length === 0) passed += pointsIn(box);
    else open.push({ box, limits, bestKey });
  }

  add(whole, tests.all);
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

/** Goes through the points of a box; how many pass without having been looked at. */
function goThrough({ box, limits }: OpenBox, dull: boolean, search: Search): number {
  const { tests, lines, look, kept, counting } = search;
  tests.bound(box);
  tests.fill(lines, limits, dull ? Number.NEGATIVE_INFINITY : kept.worstKey());
  return lines.go(box, counting, look.take);
}

/** Whether no point of a box can be kept. */
function isDull(box: Box, bestKey: number, { number, numberOf }: Entered, { kept }: Search): boolean {
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
}

const parts = new WeakMap<Prepared, Parts>();

function partsOf(prepared: Prepared): Parts {
  let known = parts.get(prepared);
  if (!known) {
    const { grid, limits } = prepared;
    known = {
      tests: regionTests(prepared),
      lines: sieve(grid.components.max, 2 * limits.length + 1),
      look: pointLook(prepared),
      numberings: knownNumberings(grid),
    };
    parts.set(prepared, known);
  }
  return known;
}
