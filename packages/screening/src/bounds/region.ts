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
 * many are present at least and at most, and the smallest part that one of them has if present.
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
}

export function boxOf({ total, elements, components }: Region): Box {
  const optional = elements.filter((element) => element.optional);
  const required = elements.length - optional.length;
  return {
    total,
    index: elements.map((element) => element.index),
    min: elements.map((element) => element.min),
    max: elements.map((element) => element.max),
    optional: elements.map((element) => element.optional),
    required,
    fewestOptional: Math.max(0, components.min - required),
    mostOptional: Math.min(optional.length, components.max - required),
    leastOptionalPart: Math.min(...optional.map(({ min }) => min)),
  };
}

/** The box of those compositions that have none of the elements turned down; null where a required one is among them. */
export function boxWithout(box: Box, turnedDown: (index: number) => boolean): Box | null {
  const stays = box.index.map((index) => !turnedDown(index));
  if (stays.some((stay, at) => !stay && !box.optional[at])) return null;
  const only = <T>(column: readonly T[]) => column.filter((_, at) => stays[at]);
  const optional = only(box.optional);
  const min = only(box.min);
  return {
    ...box,
    index: only(box.index),
    min,
    max: only(box.max),
    optional,
    mostOptional: Math.min(box.mostOptional, optional.filter(Boolean).length),
    leastOptionalPart: Math.min(...min.filter((_, at) => optional[at])),
  };
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
