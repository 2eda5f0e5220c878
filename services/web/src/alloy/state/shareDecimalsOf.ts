import type { Amounts, SearchView } from '@tiegel/contract';
import { shareDecimals } from '../../composition/shareDecimals.ts';

const most = 2;

/** Decimals of the shares of an alloy (at.%): those of its search's grid, and more where it lies between. */
export function shareDecimalsOf(composition: Amounts, search: SearchView | null): number {
  const least = search === null ? 0 : shareDecimals(search.specification.fractions);
  const needed = Object.values(composition).map((share) => {
    for (let decimals = 0; decimals < most; decimals++) {
      if (Math.abs(share - Number(share.toFixed(decimals))) < 1e-6) return decimals;
    }
    return most;
  });
  return Math.max(least, ...needed);
}
