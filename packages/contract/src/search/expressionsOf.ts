import type { SearchView } from './search.ts';

/** The expressions of a search as it tells them: columns of somebody's own are among its quantities too, and are none. */
export function expressionsOf({
  specification,
  moreQuantities,
}: Pick<SearchView, 'specification' | 'moreQuantities'>): SearchView['moreQuantities'] {
  const { lets = {} } = specification;
  return moreQuantities.filter(({ id, kind }) => kind === 'own' && lets[id] !== undefined);
}
