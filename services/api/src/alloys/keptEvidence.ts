import { type ObservedAlloy, type OwnEvidence, ownEvidenceSteps } from '@tiegel/insight';
import { keptFor } from './keptFor.ts';

const kept = {
  melts: keptFor((observed: readonly ObservedAlloy[]) => ownEvidenceSteps(observed, 'melts')),
  alloys: keptFor((observed: readonly ObservedAlloy[]) => ownEvidenceSteps(observed, 'alloys')),
};

/** The records of rules and estimate on alloys of one's own, null without any. */
export async function keptEvidence(
  observed: readonly ObservedAlloy[],
  what: keyof typeof kept,
): Promise<OwnEvidence | null> {
  return observed.length === 0 ? null : kept[what](observed);
}
