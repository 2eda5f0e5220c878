import type { Composition } from '@tiegel/screening';
import { compositionDistance } from './compositionDistance.ts';

/**
 * A spread of candidates, so that a shortlist is not ten neighbours: the first is taken, then again
 * and again the one that is farthest from all taken so far (the greedy choice, within a factor of
 * two of the best possible spread); of equals the better ranked.
 *
 * @param ranked compositions, best first
 * @param count how many to pick; all where there are no more
 * @param onePerSystem only the best ranked of each set of elements may be picked
 * @returns places in `ranked`, in the order of the picks
 * @source Gonzalez, Theor. Comput. Sci. 38 (1985) 293 (from memory)
 */
export function diversePick(
  ranked: readonly Composition[],
  count: number,
  { onePerSystem = false }: { onePerSystem?: boolean } = {},
): number[] {
  const places = onePerSystem ? bestOfSystems(ranked) : ranked.map((_, place) => place);
  const distances = new Map(places.map((place) => [place, Number.POSITIVE_INFINITY]));
  const picked: number[] = [];
  while (picked.length < count && distances.size > 0) {
    const next = farthest(distances);
    picked.push(next);
    distances.delete(next);
    for (const [place, distance] of distances) {
      distances.set(place, Math.min(distance, compositionDistance(ranked[place]!, ranked[next]!)));
    }
  }
  return picked;
}

function farthest(distances: ReadonlyMap<number, number>): number {
  let [found, most] = [-1, Number.NEGATIVE_INFINITY];
  for (const [place, distance] of distances) if (distance > most) [found, most] = [place, distance];
  return found;
}

function bestOfSystems(ranked: readonly Composition[]): number[] {
  const first = new Map<string, number>();
  for (const [place, composition] of ranked.entries()) {
    const system = Object.keys(composition)
      .filter((symbol) => composition[symbol]! > 0)
      .sort()
      .join('-');
    if (!first.has(system)) first.set(system, place);
  }
  return [...first.values()];
}
