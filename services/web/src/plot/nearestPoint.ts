/** Places of points on the screen, px; NaN where a point has none. */
export interface Places {
  x: Float32Array;
  y: Float32Array;
}

export type Direction = 'left' | 'right' | 'up' | 'down';

/** The point nearest to a place, no farther than `reach` px; null where none is. */
export function nearestPoint(places: Places, x: number, y: number, reach: number): number | null {
  let found: number | null = null;
  let least = reach * reach;
  for (let point = 0; point < places.x.length; point += 1) {
    const distance = (places.x[point]! - x) ** 2 + (places.y[point]! - y) ** 2;
    if (distance <= least) [found, least] = [point, distance];
    if (distance === 0) break;
  }
  return found;
}

/**
 * The point that an arrow key leads to: straight ahead goes before aside, as with cards on a
 * table. Points on the same place are passed over. Null where nothing lies that way.
 */
export function nextPoint(places: Places, from: number, direction: Direction): number | null {
  const [startX, startY] = [places.x[from]!, places.y[from]!];
  let found: number | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (let point = 0; point < places.x.length; point += 1) {
    const right = places.x[point]! - startX;
    const down = places.y[point]! - startY;
    const [ahead, aside] =
      direction === 'right'
        ? [right, down]
        : direction === 'left'
          ? [-right, down]
          : direction === 'down'
            ? [down, right]
            : [-down, right];
    // Less than half a pixel is no step that anybody would see.
    if (!(ahead > 0.5)) continue;
    const distance = ahead * ahead + 4 * aside * aside;
    if (distance < least) [found, least] = [point, distance];
  }
  return found;
}
