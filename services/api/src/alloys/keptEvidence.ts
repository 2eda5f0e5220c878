import { type ObservedAlloy, type OwnEvidence, ownEvidence } from '@tiegel/insight';
import { keptFor } from './keptFor.ts';

const kept = {
  melts: keptFor((observed: readonly ObservedAlloy[]) => ownEvidence(observed, 'melts')),
  alloys: keptFor((observed: readonly ObservedAlloy[]) => ownEvidence(observed, 'alloys')),
};

/** The records of rules and estimate on alloys of one's own, null without any. */
export function keptEvidence(
  observed: readonly ObservedAlloy[],
  what: keyof typeof kept,
): OwnEvidence | null {
  return observed.length === 0 ? null : kept[what](observed);
}
