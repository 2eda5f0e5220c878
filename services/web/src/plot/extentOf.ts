/** Least and greatest of the values that are there; null where none is. */
export function extentOf(values: Iterable<number | null>): [number, number] | null {
  let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (value === null) continue;
    if (value < least) least = value;
    if (value > greatest) greatest = value;
  }
  return least <= greatest ? [least, greatest] : null;
}
