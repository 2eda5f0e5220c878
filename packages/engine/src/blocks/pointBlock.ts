/**
 * Some consecutive grid points of one system as a tree of prefixes, each level an array: level l
 * holds the distinct beginnings of l + 1 amounts among the points, and for each of them its
 * parent on level l − 1 and the amount that it adds. The last level but one element is the points
 * themselves; what is left for the last element stands in `last`.
 *
 * A sum over elements is formed level by level, so that what many points share is added once, in
 * tight loops over arrays, and always from the first element to the last: in the order of the
 * canonical evaluator, hence equal to it digit for digit.
 */
export interface PointBlock {
  /** How many points. */
  count: number;
  /** One level for each element of the system but the last. */
  levels: BlockLevel[];
  /** Parts of the last element, for each point. */
  last: Float64Array;
  /** −Σ c ln c in the units of entropyTerm, for each point. */
  entropy: Float64Array;
}

export interface BlockLevel {
  count: number;
  /** Index into the level before; 0 on the first. */
  parent: Int32Array;
  /** Parts of the level's element. */
  parts: Float64Array;
}

/** A block to be filled, for systems of so many elements and so many points. */
export function newBlock(elements: number, capacity: number): PointBlock {
  return {
    count: 0,
    levels: Array.from({ length: elements - 1 }, () => ({
      count: 0,
      parent: new Int32Array(capacity),
      parts: new Float64Array(capacity),
    })),
    last: new Float64Array(capacity),
    entropy: new Float64Array(capacity),
  };
}

/** A block of its own with what a block holds now. */
export function copyOfBlock({ count, levels, last, entropy }: PointBlock): PointBlock {
  return {
    count,
    levels: levels.map((level) => ({
      count: level.count,
      parent: level.parent.slice(0, level.count),
      parts: level.parts.slice(0, level.count),
    })),
    last: last.slice(0, count),
    entropy: entropy.slice(0, count),
  };
}
