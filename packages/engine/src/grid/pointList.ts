/** Points of any systems, one behind the other in flat arrays, as what many points are computed from at once. */
export interface PointList {
  count: number;
  /** Where the elements of each point begin, and where the last ones end. */
  starts: Int32Array;
  /** Places in the pool, ascending within a point. */
  members: Int32Array;
  /** Parts, in the order of `members`. */
  parts: Int32Array;
  /** The whole of each point in parts. */
  wholes: Int32Array;
}

/** Lists points. */
export function pointList(
  points: readonly { members: readonly number[]; parts: readonly number[] }[],
): PointList {
  const starts = new Int32Array(points.length + 1);
  for (const [at, { members }] of points.entries()) starts[at + 1] = starts[at]! + members.length;
  const list: PointList = {
    count: points.length,
    starts,
    members: new Int32Array(starts.at(-1)!),
    parts: new Int32Array(starts.at(-1)!),
    wholes: new Int32Array(points.length),
  };
  for (const [at, { members, parts }] of points.entries()) {
    list.members.set(members, starts[at]);
    list.parts.set(parts, starts[at]);
    list.wholes[at] = parts.reduce((sum, part) => sum + part, 0);
  }
  return list;
}
