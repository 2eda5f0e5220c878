import type { SearchView } from '@tiegel/contract';
import type { Quantity } from '@tiegel/screening';
import { readExpressions } from '../ask/own/readExpressions.ts';

/** The expressions of a search as it tells them: columns of somebody's own are among its quantities too, and are none. */
export function expressionsOf({ specification, moreQuantities }: SearchView): SearchView['moreQuantities'] {
  const { lets = {} } = specification;
  return moreQuantities.filter(({ id, kind }) => kind === 'own' && lets[id] !== undefined);
}

/** Those that can be worked out here: not those that name columns of somebody's own. */
export function expressionsHere(lets: Readonly<Record<string, string>> = {}): Quantity[] {
  return readExpressions(Object.entries(lets).map(([name, text]) => ({ name, text }))).flatMap(
    ({ quantity }) => quantity ?? [],
  );
}
