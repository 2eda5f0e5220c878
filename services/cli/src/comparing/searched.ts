import type { Candidate, SearchView } from '@tiegel/contract';
import { ProblemError } from '@tiegel/contract/terms';
import { type Composition, formatComposition } from '@tiegel/elements';
import type { Laboratory } from '../searching/openLaboratory.ts';

/** A search whose limits and expressions are compared. */
export interface Searched {
  view: SearchView;
  /** what it kept of the alloys, in their order; null where it kept no such candidate */
  kept: (Candidate | null)[];
}

/**
 * Candidates of a search by their ranks.
 * @throws ProblemError search/unknown, search/not-finished, request/invalid
 */
export function ranked(results: Laboratory['results'], id: string, ranks: readonly number[]): Composition[] {
  return ranks.map((rank) => results.candidateAt(id, rank).composition);
}

/**
 * A search with what it kept of these alloys; of one that is not finished its question alone.
 * @throws ProblemError search/unknown
 */
export function searched(
  results: Laboratory['results'],
  id: string,
  compositions: readonly Composition[],
): Searched {
  const view = results.view(id);
  const keptOf = (composition: Composition) => candidateOf(results, id, formatComposition(composition));
  return { view, kept: compositions.map((one) => (view.state === 'done' ? keptOf(one) : null)) };
}

function candidateOf(results: Laboratory['results'], id: string, composition: string): Candidate | null {
  try {
    return results.candidate(id, composition);
  } catch (error) {
    if (error instanceof ProblemError && error.faults[0]!.code === 'candidate/unknown') return null;
    throw error;
  }
}
