import type { Front } from '@tiegel/contract';
import { type DominanceTree, dominanceTree } from './dominanceTree.ts';
import { compareMembers, type Preferences, strideOf, valuesAt } from './frontList.ts';
import { before, inOrder, joined, noFront, shortened, undominated } from './mergeFronts.ts';

/** Points are gathered until they are at least so many, and half as many as the front. */
const leastGathered = 2048;

/** The Pareto front of the points that are offered, in whatever order they come. */
export interface FrontPoints {
  /** Takes a point, given its values of the quantities of the front; one that lacks any (not finite) is on no front. */
  offer(score: number, system: number, point: number, values: Float64Array): void;
  finish(): Front;
}

/**
 * Collects the front of what one chunk offers. A point is dropped at once where the front known so
 * far dominates it, which is nearly always; what is left is gathered, and now and then made one
 * front with it.
 */
export function frontPoints(preferences: Preferences): FrontPoints {
  const stride = strideOf(preferences);
  let known: Front = noFront;
  let tree: DominanceTree = dominanceTree(known.members, preferences);
  let gathered = new Float64Array(leastGathered * stride);
  let length = 0;
  const one = new Float64Array(stride);

  function digest(): void {
    const offered = gathered.subarray(0, length);
    const fresh = undominated(offered, offered, preferences);
    const stayed = undominated(known.members, fresh, preferences);
    const all = before(joined(stayed, fresh), known.cut, preferences);
    known = shortened(inOrder(all, preferences), known.cut, preferences);
    tree = dominanceTree(known.members, preferences);
    const room = Math.max(leastGathered, Math.ceil(known.members.length / stride / 2)) * stride;
    if (room > gathered.length) gathered = new Float64Array(room);
    length = 0;
  }

  return {
    offer(score, system, point, values) {
      for (let place = 0; place < preferences.length; place += 1) {
        if (!Number.isFinite(values[place]!)) return;
      }
      if (tree.dominates(values, 0)) return;
      one[0] = score;
      one[1] = system;
      one[2] = point;
      one.set(values, valuesAt);
      if (known.cut !== null && compareMembers(one, 0, known.cut, 0, preferences) > 0) return;
      gathered.set(one, length);
      length += stride;
      if (length === gathered.length) digest();
    },
    finish() {
      digest();
      return known;
    },
  };
}
