import type { Facts } from '@tiegel/contract';
import { type Pick, pickFrom } from './pick.ts';

type Numbers = (pick: Pick) => number;

/** What the values of elements may be beside few different ones: all alike, no short decimals, of very different size. */
const ofElements: readonly Numbers[] = [
  (pick) => pick.one([1, 2, 3.5]),
  () => 2,
  (pick) => pick.between(1, 2),
  (pick) => pick.one([0.001, 1, 1000]),
  (pick) => pick.one([1.1, 1.2, 1.3]),
];
const ofPairs: readonly Numbers[] = [
  (pick) => pick.whole(-4, 4),
  () => 0,
  (pick) => pick.between(-4, 4),
  (pick) => pick.one([0, 0, 0, -1]),
  (pick) => pick.whole(0, 2) ** 2,
];

/** Facts of the same form with numbers of few different values, so that compositions tie, and some missing. */
export function inventedFacts(facts: Facts, seed: number): Facts {
  return factsFrom(facts, pickFrom(seed), ofElements[0]!, ofPairs[0]!);
}

/** The same with numbers of any kind, one kind for all columns: variances that vanish, sums that are not exact. */
export function variedFacts(facts: Facts, seed: number): Facts {
  const pick = pickFrom(seed);
  return factsFrom(facts, pick, pick.one(ofElements), pick.one(ofPairs));
}

function factsFrom({ symbols, columns, pairs }: Facts, pick: Pick, element: Numbers, pair: Numbers): Facts {
  const missing = pick.chance(0.3) ? 0.03 : 0;
  const values = () => symbols.map(() => (pick.chance(missing) ? null : element(pick)));
  return {
    symbols,
    columns: Object.fromEntries(Object.keys(columns).map((id) => [id, values()])),
    pairs: Object.fromEntries(
      Object.keys(pairs).map((id) => [
        id,
        matrixOf(symbols.length, () => (pick.chance(missing) ? null : pair(pick))),
      ]),
    ),
  };
}

function matrixOf(size: number, value: () => number | null): (number | null)[][] {
  const matrix = Array.from({ length: size }, () => new Array<number | null>(size).fill(0));
  for (let row = 1; row < size; row += 1) {
    for (let column = 0; column < row; column += 1) {
      const here = value();
      matrix[row]![column] = here;
      matrix[column]![row] = here;
    }
  }
  return matrix;
}
