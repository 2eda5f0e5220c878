import type { Front } from '@tiegel/contract';
import { dominanceTree } from './dominanceTree.ts';
import { compareMembers, type FrontList, mostMembers, type Preferences, strideOf } from './frontList.ts';

/** The front of no point. */
export const noFront: Front = { members: new Float64Array(), cut: null };

/**
 * The front of two sets of points from the front of each. Commutative and associative as long as
 * nothing was cut, and digit for digit the same however points are shared out.
 *
 * With a cut the result is still true: what lies before both cuts is known of both sets, and
 * whatever dominates a point stands before it.
 */
export function mergeFronts(one: Front, other: Front, preferences: Preferences): Front {
  const cut = nearerCut(one.cut, other.cut, preferences);
  const all = joined(
    undominated(before(one.members, cut, preferences), other.members, preferences),
    undominated(before(other.members, cut, preferences), one.members, preferences),
  );
  return shortened(inOrder(all, preferences), cut, preferences);
}

/** The members of a list that none of another dominates. */
export function undominated(list: FrontList, by: FrontList, preferences: Preferences): FrontList {
  if (list.length === 0 || by.length === 0) return list;
  const { dominates } = dominanceTree(by, preferences);
  return filtered(list, preferences, (at) => !dominates(list, at + 3));
}

/** Members in their order. */
export function inOrder(list: FrontList, preferences: Preferences): FrontList {
  const stride = strideOf(preferences);
  const starts = Float64Array.from({ length: list.length / stride }, (_, at) => at * stride);
  starts.sort((left, right) => compareMembers(list, left, list, right, preferences));
  const sorted = new Float64Array(list.length);
  for (const [place, start] of starts.entries()) {
    sorted.set(list.subarray(start, start + stride), place * stride);
  }
  return sorted;
}

/** A list in order without what is too much. */
export function shortened(list: FrontList, cut: Float64Array | null, preferences: Preferences): Front {
  const most = mostMembers * strideOf(preferences);
  if (list.length <= most) return { members: list, cut };
  const members = list.slice(0, most);
  return { members, cut: members.slice(most - strideOf(preferences)) };
}

/** The members up to a cut. */
export function before(list: FrontList, cut: Float64Array | null, preferences: Preferences): FrontList {
  if (cut === null) return list;
  return filtered(list, preferences, (at) => compareMembers(list, at, cut, 0, preferences) <= 0);
}

export function joined(one: FrontList, other: FrontList): FrontList {
  const all = new Float64Array(one.length + other.length);
  all.set(one);
  all.set(other, one.length);
  return all;
}

function nearerCut(one: Float64Array | null, other: Float64Array | null, preferences: Preferences) {
  if (one === null || other === null) return one ?? other;
  return compareMembers(one, 0, other, 0, preferences) <= 0 ? one : other;
}

function filtered(list: FrontList, preferences: Preferences, stays: (at: number) => boolean): FrontList {
  const stride = strideOf(preferences);
  const left = new Float64Array(list.length);
  let length = 0;
  for (let at = 0; at < list.length; at += stride) {
    if (!stays(at)) continue;
    left.set(list.subarray(at, at + stride), length);
    length += stride;
  }
  return length === list.length ? list : left.slice(0, length);
}
