import type { Chunk, Outcome } from '@tiegel/contract';
import { wholeOf } from '../grid/grid.ts';
import { keptPoints } from '../outcome/keptPoints.ts';
import type { Prepared } from '../prepared/prepare.ts';
import type { ScoreOptions } from '../scoring.ts';
import { rangeBoxes } from './boxes/rangeBoxes.ts';
import type { WholeBox } from './boxes/wholeBoxes.ts';
import type { SweptSystem } from './cutting/kernelSweep.ts';
import { openQuestion } from './openQuestion.ts';
import { type OpenSystem, openSystems } from './openSystems.ts';
import { pruningParts } from './pruningParts.ts';
import { kernelPace, searchBox } from './searchBox.ts';

/** A box of so many points is gone through rather than halved. */
const pointsToSweep = 2048;

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
  const { look: lookFor, numberings, ...shared } = pruningParts(prepared);
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
