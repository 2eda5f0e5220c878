import { type FrontList, type Preferences, strideOf, valuesAt } from './frontList.ts';

/** So few members are compared one by one. */
const leafSize = 8;

/**
 * Tells whether any member of a list dominates a point: as good in every quantity and better in
 * one. Equal points do not dominate each other.
 */
export interface DominanceTree {
  /** Asks of the point whose values start at a place of an array. */
  dominates(values: Float64Array, at: number): boolean;
}

/**
 * A k-d tree (Bentley, Commun. ACM 18 (1975) 509) whose nodes know the box of their members, so
 * that a question passes by what cannot dominate and ends at what must: the box that lies wholly
 * on the better side. Building takes n log n steps, a question usually some dozens.
 */
export function dominanceTree(list: FrontList, preferences: Preferences): DominanceTree {
  const size = preferences.length;
  const stride = strideOf(preferences);
  const count = list.length / stride;
  /** Values turned so that less is better. */
  const keys = new Float64Array(count * size);
  const signs = Float64Array.from(preferences, (prefer) => (prefer === 'high' ? -1 : 1));
  for (let at = 0; at < count; at += 1) {
    for (let place = 0; place < size; place += 1) {
      keys[at * size + place] = signs[place]! * list[at * stride + valuesAt + place]!;
    }
  }
  const order = Int32Array.from({ length: count }, (_, at) => at);
  const nodes = 2 ** (Math.ceil(Math.log2(Math.max(1, count / leafSize))) + 1);
  /** Node n has the children 2n and 2n + 1; its members are order[starts[n]] to before order[ends[n]]. */
  const starts = new Int32Array(nodes);
  const ends = new Int32Array(nodes);
  const best = new Float64Array(nodes * size);
  const worst = new Float64Array(nodes * size);

  function build(node: number, start: number, end: number): void {
    starts[node] = start;
    ends[node] = end;
    let widest = 0;
    let width = -1;
    for (let place = 0; place < size; place += 1) {
      let low = Number.POSITIVE_INFINITY;
      let high = Number.NEGATIVE_INFINITY;
      for (let at = start; at < end; at += 1) {
        const key = keys[order[at]! * size + place]!;
        if (key < low) low = key;
        if (key > high) high = key;
      }
      best[node * size + place] = low;
      worst[node * size + place] = high;
      if (high - low > width) {
        width = high - low;
        widest = place;
      }
    }
    if (2 * node >= nodes) return;
    const middle = (start + end) >> 1;
    separate(order, start, end, middle, (member) => keys[member * size + widest]!);
    build(2 * node, start, middle);
    build(2 * node + 1, middle, end);
  }

  if (count > 0) build(1, 0, count);
  const asked = new Float64Array(size);

  function memberDominates(member: number): boolean {
    let better = false;
    for (let place = 0; place < size; place += 1) {
      const key = keys[member * size + place]!;
      if (key > asked[place]!) return false;
      if (key < asked[place]!) better = true;
    }
    return better;
  }

  function anyOf(node: number): boolean {
    let better = false;
    let all = true;
    for (let place = 0; place < size; place += 1) {
      const key = asked[place]!;
      if (best[node * size + place]! > key) return false;
      if (best[node * size + place]! < key) better = true;
      if (worst[node * size + place]! > key) all = false;
    }
    if (!better) return false;
    if (all) return true;
    if (2 * node < nodes) return anyOf(2 * node) || anyOf(2 * node + 1);
    for (let at = starts[node]!; at < ends[node]!; at += 1) if (memberDominates(order[at]!)) return true;
    return false;
  }

  return {
    dominates(values, at) {
      if (count === 0) return false;
      for (let place = 0; place < size; place += 1) asked[place] = signs[place]! * values[at + place]!;
      return anyOf(1);
    },
  };
}

/** Moves what has lesser keys before the middle and what has greater ones behind it (quickselect, Hoare 1961). */
function separate(
  order: Int32Array,
  start: number,
  end: number,
  middle: number,
  keyOf: (member: number) => number,
): void {
  let low = start;
  let high = end - 1;
  while (low < high) {
    const pivot = keyOf(order[(low + high) >> 1]!);
    let left = low;
    let right = high;
    while (left <= right) {
      while (keyOf(order[left]!) < pivot) left += 1;
      while (keyOf(order[right]!) > pivot) right -= 1;
      if (left > right) break;
      const moved = order[left]!;
      order[left] = order[right]!;
      order[right] = moved;
      left += 1;
      right -= 1;
    }
    if (middle <= right) high = right;
    else if (middle >= left) low = left;
    else return;
  }
}
