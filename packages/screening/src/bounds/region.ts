/**
 * A part of a grid: all compositions whose elements keep to bounds and whose amounts add up to
 * the whole. Every element that is not optional is present; the number of elements present lies
 * within `components`.
 *
 * - `total`: the whole, in parts
 * - `elements`: by index into the program's symbols; `min` and `max` hold for an element that is
 *   present, in parts, 0 < min ≤ max. An `optional` element may be absent instead.
 */
export interface Region {
  total: number;
  elements: readonly RegionElement[];
  components: { min: number; max: number };
}

export interface RegionElement {
  index: number;
  min: number;
  max: number;
  optional: boolean;
}

/**
 * A region as the bounds want it: the elements' data in columns, and of its optional elements how
 * many are present at least and at most, the smallest part that one of them has if present, and
 * what each can have above that, most first.
 */
export interface Box {
  total: number;
  index: readonly number[];
  min: readonly number[];
  max: readonly number[];
  optional: readonly boolean[];
  required: number;
  fewestOptional: number;
  mostOptional: number;
  leastOptionalPart: number;
  optionalRooms: readonly number[];
}

export function boxOf({ total, elements, components }: Region): Box {
  const required = elements.filter(({ optional }) => !optional).length;
  return {
    total,
    index: elements.map(({ index }) => index),
    min: elements.map(({ min }) => min),
    max: elements.map(({ max }) => max),
    optional: elements.map(({ optional }) => optional),
    required,
    fewestOptional: Math.max(0, components.min - required),
    ...optionalPart(elements, components.max - required),
  };
}

function optionalPart(elements: readonly Omit<RegionElement, 'index'>[], most: number) {
  const optional = elements.filter((element) => element.optional);
  const leastOptionalPart = Math.min(...optional.map(({ min }) => min));
  return {
    mostOptional: Math.min(optional.length, most),
    leastOptionalPart,
    optionalRooms: optional.map(({ max }) => max - leastOptionalPart).sort((a, b) => b - a),
  };
}

/** The box of those compositions that have none of the elements turned down; null where a required one is among them. */
export function boxWithout(box: Box, turnedDown: (index: number) => boolean): Box | null {
  const places = [...box.index.keys()].filter((at) => !turnedDown(box.index[at]!));
  const only = <T>(column: readonly T[]) => places.map((at) => column[at]!);
  const columns = {
    index: only(box.index),
    min: only(box.min),
    max: only(box.max),
    optional: only(box.optional),
  };
  if (columns.optional.filter((optional) => !optional).length < box.required) return null;
  const elements = places.map((at) => ({
    min: box.min[at]!,
    max: box.max[at]!,
    optional: box.optional[at]!,
  }));
  return { ...box, ...columns, ...optionalPart(elements, box.mostOptional) };
}

/** The box counted from its lower corner: what is left to share out when every required element has its least. */
export function boxFromCorner(box: Box): Box {
  const corner = lowerCorner(box);
  return {
    ...box,
    total: box.total - corner.reduce((sum, part) => sum + part, 0),
    min: box.min.map((min, at) => (box.optional[at] ? min : 0)),
    max: box.max.map((max, at) => max - corner[at]!),
  };
}

/** The amounts that every composition of a box has at least: 0 for an optional element. */
export function lowerCorner(box: Box): number[] {
  return box.min.map((min, at) => (box.optional[at] ? 0 : min));
}
