import { searchJson } from '../output/searchJson.ts';
import { searchText } from '../output/searchText.ts';
import { standardOutput } from '../output/standardOutput.ts';
import { openSearching, type SearchingOptions } from './openSearching.ts';
import { candidatesOf, everyCandidate, runSearch } from './runSearch.ts';

/** `search SPEC`: runs a request to its end and writes what it found. */
export async function searchOnce(
  request: unknown,
  options: SearchingOptions & { json?: true },
): Promise<void> {
  const { searches, prices, close } = await openSearching(options);
  try {
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
