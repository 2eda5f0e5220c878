import type { SearchView } from '@tiegel/contract';
import type { Searches } from '@tiegel/search';
import { standardOutput } from '../output/standardOutput.ts';
import { openSearching, type SearchingOptions } from './openSearching.ts';
import { refuseAbsent } from './refuseAbsent.ts';

interface Options extends SearchingOptions {
  json?: true;
}

/** `search SPEC`: runs a request to its end and writes what it found. */
export function searchOnce(request: unknown, options: Options): Promise<void> {
  return found(options, async (searches) => (await running()).runSearch(searches, request, options.database));
}

/** `searches resume ID --database FILE`: goes on with a search of a database in this process, and writes what it found. */
export async function resumeOnce(id: string, options: Options & { database: string }): Promise<void> {
  refuseAbsent(options.database);
  await found(options, async (searches) => (await running()).resumeSearch(searches, id, options.database));
}

/** `searches cancel ID --database FILE`: ends a search of a database that nobody works on. */
export async function cancelOnce(id: string, options: { database: string }): Promise<SearchView> {
  refuseAbsent(options.database);
  const { searches, close } = await openSearching({ ...options, workers: 1 });
  try {
    return searches.cancel(id);
  } finally {
    await close();
  }
}

/** Only when it is asked for: threads that score are started by then. */
const running = () => import('./runSearch.ts');

async function found(options: Options, run: (searches: Searches) => Promise<SearchView>): Promise<void> {
  const { searches, close } = await openSearching(options);
  try {
    const { candidatesOf, everyCandidate } = await running();
    const { searchJson } = await import('../output/searchJson.ts');
    const { searchText } = await import('../output/searchText.ts');
    const view = await run(searches);
    const candidates = candidatesOf(searches, view.id);
    const onFront = { ...everyCandidate, front: true as const };
    const front = view.specification.front ? candidatesOf(searches, view.id, onFront) : null;
    await standardOutput(options.json ? searchJson(view, candidates, front) : searchText(view, candidates));
  } finally {
    await close();
  }
}
