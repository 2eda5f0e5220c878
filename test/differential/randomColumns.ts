import type { OwnColumn } from '@tiegel/elements';
import type { Pick } from './pick.ts';

/**
 * Kinds of numbers that a column of one's own may hold: anything, also where a sum of them is 0 everywhere, cancels,
 * is no short decimal, or lies far from 1.
 */
const kinds: readonly ((pick: Pick) => number)[] = [
  (pick) => pick.whole(-3, 3),
  (pick) => pick.one([0, 0, 0, 1]),
  () => 0,
  () => 2.5,
  (pick) => pick.between(-1, 1),
  (pick) => pick.between(1, 2) * 10 ** pick.whole(-9, 9),
  (pick) => pick.one([1e-9, 1, 1e9]),
  (pick) => pick.one([-0.1, 0.1, 0.2, 0.3]),
  (pick) => 1000 + pick.whole(0, 3) / 1000,
];

/** One or two columns of one's own over a pool, now and then with elements that have no value. */
export function randomColumns(pick: Pick, pool: readonly string[]): OwnColumn[] {
  return ['ownOne', 'ownTwo'].slice(0, pick.whole(1, 2)).map((id) => {
    const value = pick.one(kinds);
    const missing = pick.chance(0.15) ? 0.2 : 0;
    const known = pool.filter(() => !pick.chance(missing));
    return {
      ...{ id, name: id, unit: '', mixing: pick.one(['mole', 'mole', 'mass', 'volume'] as const) },
      values: Object.fromEntries(known.map((symbol) => [symbol, value(pick)])),
    };
  });
}
