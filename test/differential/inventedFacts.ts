import type { Facts } from '@tiegel/contract';
import { type Pick, pickFrom } from './pick.ts';

/** Facts of the same form with numbers of few different values, so that compositions tie, and some missing. */
export function inventedFacts({ symbols, columns, pairs }: Facts, seed: number): Facts {
  const pick = pickFrom(seed);
  const missing = pick.chance(0.3) ? 0.03 : 0;
  const values = (of: readonly number[]) => symbols.map(() => (pick.chance(missing) ? null : pick.one(of)));
  return {
    symbols,
    columns: Object.fromEntries(Object.keys(columns).map((id) => [id, values([1, 2, 3.5])])),
    pairs: Object.fromEntries(Object.keys(pairs).map((id) => [id, matrixOf(symbols.length, missing, pick)])),
  };
}

function matrixOf(size: number, missing: number, pick: Pick): (number | null)[][] {
  const matrix = Array.from({ length: size }, () => new Array<number | null>(size).fill(0));
  for (let row = 1; row < size; row += 1) {
    for (let column = 0; column < row; column += 1) {
      const value = pick.chance(missing) ? null : pick.whole(-4, 4);
      matrix[row]![column] = value;
      matrix[column]![row] = value;
    }
  }
  return matrix;
}
