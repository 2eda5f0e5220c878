import type { Shortlist, ShortlistEntry } from './shortlist.ts';
import type { ShortlistStatus } from './shortlistStatuses.ts';

/** What somebody set without knowing of another’s: a status, or whether the alloy 'stays' or is 'removed'. */
export interface ShortlistVersion<Value extends string = string> {
  value: Value;
  by: string;
  at: string;
  /** until somebody settles it */
  holds: boolean;
}

/** An entry on which people contradict each other; nobody who saw all versions has settled it yet. */
export type ShortlistConflict = OnStatus | OnRemoval;

interface OnStatus {
  entry: string;
  about: 'status';
  /** what holds, then the others */
  versions: ShortlistVersion<ShortlistStatus>[];
}

interface OnRemoval {
  entry: string;
  about: 'removal';
  versions: ShortlistVersion<'stays' | 'removed'>[];
}

/** The open conflicts of a shortlist in the order of its entries; what was taken off has none. */
export function conflictsOf({ entries }: Pick<Shortlist, 'entries'>): ShortlistConflict[] {
  return entries
    .filter(({ removed }) => !removed.value)
    .flatMap((entry) => [...onStatus(entry), ...onRemoval(entry)]);
}

function onStatus({ entry, status }: ShortlistEntry): OnStatus[] {
  const { rivals } = status;
  if (rivals.length === 0) return [];
  const versions = [status, ...rivals].map(({ value, by, at }, place) => ({
    ...{ value, by, at, holds: place === 0 },
  }));
  return [{ entry, about: 'status', versions }];
}

function onRemoval({ entry, removed, notes, status }: ShortlistEntry): OnRemoval[] {
  const rivals = removed.rivals.filter(({ value }) => value);
  if (rivals.length === 0) return [];
  // A removal that came second kept the entry by its own number: whoever wrote last before it is the other.
  const second = rivals.find(({ sequence }) => sequence === removed.sequence);
  const written = [...notes, status].filter(
    ({ by, sequence }) => second && by !== second.by && sequence < second.sequence,
  );
  const { by, at } = written.toSorted((a, b) => b.sequence - a.sequence)[0] ?? removed;
  const off = rivals.map((rival) => ({
    value: 'removed' as const,
    by: rival.by,
    at: rival.at,
    holds: false,
  }));
  return [{ entry, about: 'removal', versions: [{ value: 'stays', by, at, holds: true }, ...off] }];
}
