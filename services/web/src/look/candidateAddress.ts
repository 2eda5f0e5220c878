import { formatComposition } from '@tiegel/elements';

/** The address of a candidate's page: its search and its canonical composition, never its rank. */
export function candidateAddress(searchId: string, composition: Record<string, number>): string {
  return `/searches/${encodeURIComponent(searchId)}/candidates/${formatComposition(composition)}`;
}
