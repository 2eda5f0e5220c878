import type { PointBlock } from './pointBlock.ts';

/** Bounds in parts of a system's elements, and the parts that make the whole. */
export interface SystemBounds {
  lowest: ArrayLike<number>;
  highest: ArrayLike<number>;
  whole: number;
}

/** Whether any amounts keep to the bounds. */
export function holdsPoints({ lowest, highest, whole }: SystemBounds): boolean {
  let least = 0;
  let most = 0;
  for (let element = 0; element < lowest.length; element += 1) {
    if (lowest[element]! > highest[element]!) return false;
    least += lowest[element]!;
    most += highest[element]!;
  }
  return least <= whole && whole <= most;
}

/** Goes through the points of a system in the order of their numbers, a block at a time. */
export interface PointWalk {
  /** Overwrites a block with the next points, `most` at most; its count is 0 after the last point. */
  fill(block: PointBlock, most: number): void;
}

/**
 * A walk over the points within bounds that hold some, from the point with the amounts `from`, or
 * from the first.
 */
export function pointWalk(bounds: SystemBounds, from: readonly number[] | null = null): PointWalk {
  const { lowest, highest, whole } = bounds;
  const elements = lowest.length;
  /** The element that varies along a line; the one behind it takes what is left. */
  const line = elements - 2;
  const leastBehind = sumsBehind(lowest);
  const mostBehind = sumsBehind(highest);
  const amounts = new Int32Array(elements);
  const greatest = new Int32Array(elements);
  /** What the elements before leave. */
  const left = new Int32Array(elements);
  let ended = false;

  /** Sets the elements from `first` on to the least amounts that leave a point, or to given ones. */
  function restart(first: number, given: readonly number[] | null): void {
    for (let element = first; element <= line; element += 1) {
      left[element] = element === 0 ? whole : left[element - 1]! - amounts[element - 1]!;
      greatest[element] = Math.min(highest[element]!, left[element]! - leastBehind[element]!);
      amounts[element] =
        given?.[element] ?? Math.max(lowest[element]!, left[element]! - mostBehind[element]!);
    }
  }

  /** Goes to the first point of the next line; gives the first element that changed, or −1 at the end. */
  function nextLine(): number {
    let element = line - 1;
    while (element >= 0 && amounts[element]! >= greatest[element]!) element -= 1;
    if (element < 0) {
      ended = true;
      return -1;
    }
    amounts[element]! += 1;
    restart(element + 1, null);
    return element;
  }

  /** Appends the present amounts of the elements from `first` to the one before the line. */
  function appendPrefix(block: PointBlock, first: number): void {
    for (let element = first; element < line; element += 1) {
      const level = block.levels[element]!;
      level.parent[level.count] = element === 0 ? 0 : block.levels[element - 1]!.count - 1;
      level.parts[level.count] = amounts[element]!;
      level.count += 1;
    }
  }

  /** Appends points of the present line, up to a count; whether the line was finished. */
  function appendLine({ levels, last }: PointBlock, most: number): boolean {
    const level = levels[line]!;
    const { parent, parts } = level;
    const prefix = line === 0 ? 0 : levels[line - 1]!.count - 1;
    const both = left[line]!;
    const end = greatest[line]!;
    let amount = amounts[line]!;
    let at = level.count;
    for (; amount <= end && at < most; amount += 1, at += 1) {
      parent[at] = prefix;
      parts[at] = amount;
      last[at] = both - amount;
    }
    level.count = at;
    amounts[line] = amount;
    return amount > end;
  }

  function fill(block: PointBlock, most: number): void {
    for (const level of block.levels) level.count = 0;
    block.count = 0;
    if (ended || most === 0) return;
    if (line < 0) {
      block.last[0] = whole;
      block.count = 1;
      ended = true;
      return;
    }
    const points = block.levels[line]!;
    appendPrefix(block, 0);
    while (appendLine(block, most)) {
      const changed = nextLine();
      if (changed < 0 || points.count === most) break;
      appendPrefix(block, changed);
    }
    block.count = points.count;
  }

  restart(0, from);
  return { fill };
}

/** For each place, the sum of what stands behind it. */
function sumsBehind(amounts: ArrayLike<number>): number[] {
  const sums = new Array<number>(amounts.length).fill(0);
  for (let at = amounts.length - 2; at >= 0; at -= 1) sums[at] = sums[at + 1]! + amounts[at + 1]!;
  return sums;
}
