/** What there is to share out, and how much of it each element can take. */
interface Room {
  elements: number;
  width: ArrayLike<number>;
  rest: number;
}

/** Places of so many elements in the order of their numbers, before anything is sorted. */
export function startOrder(order: Int32Array, start: number, elements: number): void {
  for (let at = 0; at < elements; at += 1) order[start + at] = at;
}

/**
 * Brings places of elements into the order of rising slopes. From box to box slopes change little, and
 * an order that was right for the one before is nearly right: going on with it takes few exchanges.
 */
export function sortPlaces(
  slopes: Float64Array,
  from: number,
  order: Int32Array,
  start: number,
  elements: number,
): void {
  for (let next = 1; next < elements; next += 1) {
    const place = order[start + next]!;
    const slope = slopes[from + place]!;
    let at = next;
    while (at > 0 && slopes[from + order[start + at - 1]!]! > slope) {
      order[start + at] = order[start + at - 1]!;
      at -= 1;
    }
    order[start + at] = place;
  }
}

/** The least Σ slopeᵢ yᵢ with 0 ≤ yᵢ ≤ widthᵢ and Σ yᵢ = rest: what there is goes where it costs least. */
export function leastSum(
  slopes: Float64Array,
  from: number,
  order: Int32Array,
  start: number,
  { width, rest }: Room,
): number {
  let left = rest;
  let sum = 0;
  for (let at = start; left > 0; at += 1) {
    const place = order[at]!;
    const given = Math.min(width[place]!, left);
    sum += given * slopes[from + place]!;
    left -= given;
  }
  return sum;
}

/** And the greatest. */
export function greatestSum(
  slopes: Float64Array,
  from: number,
  order: Int32Array,
  start: number,
  { elements, width, rest }: Room,
): number {
  let left = rest;
  let sum = 0;
  for (let at = start + elements - 1; left > 0; at -= 1) {
    const place = order[at]!;
    const given = Math.min(width[place]!, left);
    sum += given * slopes[from + place]!;
    left -= given;
  }
  return sum;
}
