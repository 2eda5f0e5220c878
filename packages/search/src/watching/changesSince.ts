import type { SearchDifferences, SearchView } from '@tiegel/contract';
import { differencesOf } from '@tiegel/contract/terms';
import { conditions, quantities } from '@tiegel/screening';

/** What a search asks, or was computed from, otherwise than another one: the words of the page, for api and terminal. */
export function changesSince(other: SearchView, search: SearchView): SearchDifferences {
  const changes = differencesOf(other, search, { quantities, conditions });
  return { search: search.id, other: other.id, changes };
}
