import type { ProblemError, SearchView } from '@tiegel/contract';
import { problem } from '@tiegel/contract/terms';

/** What is told of a search that is over without being done. */
export function notDone({ state, reason }: SearchView): ProblemError {
  // A reason is a sentence, and stands at the end of one.
  return problem('command/search-ended', {
    state,
    reason: reason?.replace(/\.$/, '') ?? 'no reason is known',
  });
}
