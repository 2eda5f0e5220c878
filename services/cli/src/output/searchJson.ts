import type { Candidate, SearchView } from '@tiegel/contract';
import { jsonList } from './jsonText.ts';

/** The result of a search as one JSON object, a candidate a line, written without holding them. */
export function* searchJson(
  view: SearchView,
  candidates: Iterable<Candidate>,
  front: Iterable<Candidate> | null,
): Generator<string> {
  const { counts, seconds, preparationSeconds, storingSeconds, dataVersion, engineVersion } = view;
  yield `{"counts":${JSON.stringify(counts)},\n"candidates":`;
  yield* jsonList(candidates);
  if (front !== null) {
    yield ',\n"front":';
    yield* jsonList(front);
  }
  const rest = { seconds, preparationSeconds, storingSeconds, dataVersion, engineVersion };
  yield `,\n${JSON.stringify(rest).slice(1)}\n`;
}
