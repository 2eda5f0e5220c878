import { problem } from '../problem/problem.ts';
import { conflictsOf, type ShortlistVersion } from './conflictsOf.ts';
import type { Shortlist } from './shortlist.ts';
import type { ShortlistAct } from './shortlistChange.ts';
import { type ShortlistStatus, shortlistStatuses } from './shortlistStatuses.ts';

/** How versions of a conflict are named: a status, or whether the alloy stays. */
export const versionNames = [...shortlistStatuses, 'stays', 'removed'] as const;
type VersionName = (typeof versionNames)[number];

/**
 * The change that settles a conflict by keeping one of its versions. Whoever makes it has seen the list
 * as it is handed in.
 * @param entry canonical composition
 * @throws ProblemError shortlist/no-entry, shortlist/no-conflict; request/wrong-value for a version that nobody set
 */
export function settlingAct(list: Shortlist, entry: string, version: VersionName): ShortlistAct {
  if (list.entries.every((one) => one.entry !== entry)) throw problem('shortlist/no-entry', { entry });
  const conflicts = conflictsOf(list).filter((one) => one.entry === entry);
  if (conflicts.length === 0) throw problem('shortlist/no-conflict', { entry });
  const versions = conflicts.flatMap((one): ShortlistVersion[] => one.versions);
  if (versions.every(({ value }) => value !== version)) {
    const right = `Keep one of: ${versions.map(({ value, by }) => `"${value}" (${by})`).join(', ')}.`;
    throw problem('request/wrong-value', { place: `The version of ${entry}`, found: `"${version}"`, right });
  }
  if (version === 'stays') return { kind: 'restore', entry };
  if (version === 'removed') return { kind: 'remove', entry };
  return { kind: 'status', entry, status: version satisfies ShortlistStatus };
}
