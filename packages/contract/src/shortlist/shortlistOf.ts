import type { Shortlist, ShortlistEntry } from './shortlist.ts';
import type { TakenChange } from './shortlistChange.ts';

/** What is known of a shortlist before any change. */
export interface ShortlistStart {
  id: string;
  createdAt: string;
}

/**
 * A shortlist as its changes make it, in the order of their sequence. Nothing is lost: notes are
 * only ever added, what is removed stays and is marked, and where somebody sets what another set
 * without their knowing, both values are kept (`rivals`) until someone who saw both sets it again.
 * Whoever writes on an entry without knowing that it was removed brings it back, with the removal
 * as a rival, until someone who saw it removes the entry or restores it. The first change names the shortlist.
 */
export function shortlistOf({ id, createdAt }: ShortlistStart, changes: readonly TakenChange[]): Shortlist {
  const entries = new Map<string, ShortlistEntry>();
  const list: Shortlist = {
    ...{ id, createdAt, sequence: 0 },
    name: { value: '', by: '', at: createdAt, sequence: 0, rivals: [] },
    entries: [],
  };
  for (const change of changes) {
    list.sequence = change.sequence;
    if (change.act.kind === 'rename') list.name = set(list.name, change.act.name, change);
    else apply(change, change.act, entries);
  }
  return { ...list, entries: [...entries.values()] };
}

type EntryAct = Exclude<TakenChange['act'], { kind: 'rename' }>;

function apply(change: TakenChange, act: EntryAct, entries: Map<string, ShortlistEntry>): void {
  const entry = entries.get(act.entry);
  if (entry === undefined) {
    // Only adding makes an entry; the store refuses all else on one that is not there.
    if (act.kind === 'add') entries.set(act.entry, added(change, act));
    return;
  }
  switch (act.kind) {
    case 'add':
    case 'restore':
      if (entry.removed.value || (act.kind === 'restore' && entry.removed.rivals.length > 0))
        entry.removed = set(entry.removed, false, change);
      entry.search ??= act.kind === 'add' ? (act.search ?? null) : null;
      return;
    case 'remove':
      if (!entry.removed.value) entry.removed = set(entry.removed, true, change);
      if (touchedUnseen(entry, change)) entry.removed = contested(entry.removed, change);
      return;
    case 'note':
      entry.notes = [...entry.notes, { text: act.text, ...stamp(change) }];
      break;
    case 'status':
      entry.status = set(entry.status, act.status, change);
      break;
  }
  if (entry.removed.value && entry.removed.sequence > change.seen) {
    entry.removed = set(entry.removed, false, change);
  }
}

const stamp = ({ by, at, sequence }: TakenChange) => ({ by, at, sequence });

function added(change: TakenChange, { entry, search }: EntryAct & { kind: 'add' }): ShortlistEntry {
  const first = { ...stamp(change), rivals: [] };
  return {
    ...{ entry, search: search ?? null, addedBy: change.by, addedAt: change.at, notes: [] },
    status: { value: 'proposed', ...first },
    removed: { value: false, ...first },
  };
}

/** The new value, with those as rivals that were set after what its author saw. */
function set<Value>(
  before: { value: Value; by: string; at: string; sequence: number; rivals: Said<Value>[] },
  value: Value,
  change: TakenChange,
) {
  const { rivals, ...held } = before;
  const unseen = [...rivals, held].filter(
    (one) => one.sequence > change.seen && one.value !== value && one.by !== change.by,
  );
  return { value, ...stamp(change), rivals: unseen };
}

interface Said<Value> {
  value: Value;
  by: string;
  at: string;
  sequence: number;
}

/** Whether somebody wrote on an entry after what this change's author saw. */
function touchedUnseen({ notes, status }: ShortlistEntry, { seen, by }: TakenChange): boolean {
  return [...notes, status].some((one) => one.sequence > seen && one.by !== by);
}

/** A removal by somebody who did not know that another was writing there: the entry stays in sight. */
function contested(removed: ShortlistEntry['removed'], change: TakenChange): ShortlistEntry['removed'] {
  const rival = { value: true, ...stamp(change) };
  return { value: false, ...stamp(change), rivals: [...removed.rivals, rival] };
}
