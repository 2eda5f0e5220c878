import type { CandidateQuery, SystemView } from '@tiegel/contract';
import type { Searches } from '../searches.ts';
import {
  type Alloys,
  type Explored,
  isExplored,
  type SystemKnown,
  systemsExplored,
} from './systemsExplored.ts';

/** Which systems of a search are meant. */
export interface SystemsQuery {
  id: string;
  query: CandidateQuery;
  /** yes: those with published or own alloys or melts only, no: those without; all if left out */
  explored?: 'yes' | 'no' | undefined;
}

/** Systems by their best candidates, and among what. */
interface SystemsFound {
  systems: SystemKnown[];
  explored: Explored;
  meeting: number;
  among: Awaited<ReturnType<Searches['keptSystems']>>['among'];
}

/**
 * The systems that are asked for, with what is known of each and of them all.
 * @param laboratory melts recorded here, and alloys that were brought in
 * @throws ProblemError those of Searches.keptSystems
 */
export async function systemsAsked(
  searches: Pick<Searches, 'view' | 'keptSystems'>,
  { id, query, explored: wanted }: SystemsQuery,
  laboratory: { melts: Alloys; own: Alloys },
): Promise<SystemsFound> {
  const { systems: kept, meeting, among } = await searches.keptSystems(id, query);
  const { systems, explored } = systemsExplored(searches.view(id), kept, laboratory);
  const meant = (one: SystemKnown) => wanted === undefined || isExplored(one) === (wanted === 'yes');
  return { systems: systems.filter(meant), explored, meeting, among };
}

/** A system as it is told, with its best candidate. */
export function systemView(
  searches: Pick<Searches, 'candidateAt'>,
  id: string,
  { rank, ...known }: SystemKnown,
): SystemView {
  return { ...known, best: searches.candidateAt(id, rank) };
}
