/** A corner of the front: both values, the best rank that has them, and how many have them. */
interface FrontPoint {
  values: [number, number];
  rank: number;
  alike: number;
}

/** The front of two quantities, told of the candidates one by one, in the order of rank. */
export interface Front {
  add(first: number | null, second: number | null, rank: number): void;
  /** From the best of the first quantity to the best of the second. */
  points(): FrontPoint[];
}

/**
 * Collects the points that no other one beats in one quantity without losing in the other (the
 * Pareto front; equal values are one point). Holds the front alone: one search by halving a
 * candidate. A candidate without one of the values is on no front.
 */
export function tradeOff(prefer: readonly ['low' | 'high', 'low' | 'high']): Front {
  const signs = prefer.map((wish) => (wish === 'low' ? 1 : -1)) as [number, number];
  // Both as 'lower is better': the first rises along the front, the second falls.
  const front: (FrontPoint & { first: number; second: number })[] = [];

  /** The place of the first point whose first value is above that one. */
  function placeAbove(first: number): number {
    let [low, high] = [0, front.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (front[middle]!.first <= first) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  return {
    add(one, other, rank) {
      if (one === null || other === null) return;
      const [first, second] = [signs[0] * one, signs[1] * other];
      const place = placeAbove(first);
      const before = front[place - 1];
      if (before && before.second <= second) {
        if (before.first === first && before.second === second) before.alike += 1;
        return;
      }
      const from = before?.first === first ? place - 1 : place;
      let end = place;
      while (end < front.length && front[end]!.second >= second) end += 1;
      front.splice(from, end - from, { first, second, values: [one, other], rank, alike: 1 });
    },
    points: () => front.map(({ values, rank, alike }) => ({ values, rank, alike })),
  };
}
