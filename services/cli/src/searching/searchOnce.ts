import { standardOutput } from '../output/standardOutput.ts';
import { openSearching, type SearchingOptions } from './openSearching.ts';

/** `search SPEC`: runs a request to its end and writes what it found. */
export async function searchOnce(
  request: unknown,
  options: SearchingOptions & { json?: true },
): Promise<void> {
  const { searches, prices, close } = await openSearching(options);
  try {
    // Only now: threads that score are started by then.
    const { candidatesOf, everyCandidate, runSearch } = await import('./runSearch.ts');
    const { searchJson } = await import('../output/searchJson.ts');
    const { searchText } = await import('../output/searchText.ts');
    const view = await runSearch(searches, request);
    const candidates = candidatesOf(searches, view.id);
    const onFront = { ...everyCandidate, front: true as const };
    const front = view.specification.front ? candidatesOf(searches, view.id, onFront) : null;
    await standardOutput(
      options.json ? searchJson(view, candidates, front) : searchText(view, candidates, prices),
    );
  } finally {
    await close();
  }
}
