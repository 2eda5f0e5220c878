/**
 * Members of a Pareto front in one flat array, (3 + quantities) numbers for each: score, system,
 * point, then the value of each quantity of the front. In the order of `compareMembers`.
 */
export type FrontList = Float64Array;

/** Where the values of a member begin. */
export const valuesAt = 3;

/** At most so many members are kept. */
export const mostMembers = 100_000;

/** What is better of each quantity of a front. */
export type Preferences = readonly ('high' | 'low')[];

/** How many numbers a member has. */
export function strideOf(preferences: Preferences): number {
  return valuesAt + preferences.length;
}

/**
 * Below 0 when the member that starts at `left` of one list stands before that at `right` of
 * another: better in the first quantity, then in the next; equal ones by composition. A point
 * that dominates another one stands before it.
 */
export function compareMembers(
  one: Float64Array,
  left: number,
  other: Float64Array,
  right: number,
  preferences: Preferences,
): number {
  for (let place = 0; place < preferences.length; place += 1) {
    const [a, b] = [one[left + valuesAt + place]!, other[right + valuesAt + place]!];
    if (a !== b) return a > b === (preferences[place] === 'high') ? -1 : 1;
  }
  return one[left + 1]! - other[right + 1]! || one[left + 2]! - other[right + 2]!;
}
