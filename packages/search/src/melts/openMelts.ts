import { type ChargeSheet, leftToSheet, type Melt, type MeltDoubt, meltDoubts, meltOf } from '@tiegel/charge';
import type { MeltEntry } from '@tiegel/contract';
import { ProblemError, problem } from '@tiegel/contract/terms';
import { type PhaseClass, phaseClassOf } from '@tiegel/elements/publishedAlloys';
import type { ObservedAlloy } from '@tiegel/insight';
import { valueFor } from '@tiegel/screening';
import type { MeltTable, StoredAttachment, StoredMelt } from '@tiegel/store';
import type { ChargeSheets } from './openChargeSheets.ts';

/** What follows from what was written down of a melt. */
interface Following extends Omit<Melt, 'lost' | 'expectedIngot'> {
  phaseClass: PhaseClass | null;
  /** one disordered fcc or bcc solution; null: not looked at */
  singlePhase: boolean | null;
  /** what is probably a slip, to be seen again */
  doubts: MeltDoubt[];
}

/** A melt as it is told: what was written down, and what follows from it. */
export interface MeltView extends MeltEntry, Following, Omit<StoredMelt, 'entry'> {
  attachments: StoredAttachment[];
}

/** The melts of a laboratory. A deleted one leaves the list, and can be brought back. */
export interface Melts {
  /** The newest first. */
  list(): MeltView[];
  /** @throws ProblemError melt/not-found */
  view(id: string): MeltView;
  /** Every version, the newest first. */
  history(id: string): { version: number; at: string; by: string | null; entry: MeltEntry }[];
  /**
   * @param by whose token it is written with; null: nobody was asked
   * @throws ProblemError charge/not-found, and as meltOf of packages/charge does
   */
  record(entry: MeltEntry, key?: string | null, by?: string | null): MeltView;
  /** @throws ProblemError melt/not-found, melt/changed-meanwhile, and as `record` does */
  change(id: string, version: number, entry: MeltEntry, by?: string | null): MeltView;
  remove(id: string): MeltView;
  restore(id: string): MeltView;
  /** Those whose phases were observed, as records of rules take them. */
  observed(): ObservedAlloy[];
}

export function openMelts(table: MeltTable, sheets: ChargeSheets): Melts {
  const stored = (id: string): StoredMelt => {
    const found = table.find(id);
    if (found === null) throw problem('melt/not-found', { id: id.slice(0, 20) });
    return found;
  };
  // A version never changes, nor does a charge sheet. A list of a thousand melts took a quarter of a
  // second without, and every alloy that is read asks for it.
  const known = new Map<string, { version: number; following: Following }>();
  const followingOf = ({ id, version, entry }: StoredMelt): Following => {
    const found = known.get(id);
    if (found?.version === version) return found.following;
    const following = followingFrom(entry as MeltEntry, sheets);
    known.set(id, { version, following });
    return following;
  };
  const viewOf = (melt: StoredMelt): MeltView => {
    const { entry, ...standing } = melt;
    const attachments = table.attachments(standing.id);
    return { ...standing, ...(entry as MeltEntry), ...followingOf(melt), attachments };
  };
  const view = (id: string) => viewOf(stored(id));
  const setDeleted = (id: string, at: string | null) => {
    stored(id);
    table.setDeleted(id, at);
    return view(id);
  };
  const list = () => table.list().map(viewOf);
  return {
    ...{ list, view },
    history(id) {
      stored(id);
      return table.history(id).map(({ entry, ...rest }) => ({ ...rest, entry: entry as MeltEntry }));
    },
    record: (entry, key = null, by = null) => viewOf(table.create(checked(entry, sheets), now(), key, by)),
    change(id, version, entry, by = null) {
      stored(id);
      const changed = table.change(id, version, checked(entry, sheets), now(), by);
      if (changed !== null) return viewOf(changed);
      throw problem('melt/changed-meanwhile', { version, current: stored(id).version }, '/version');
    },
    remove: (id) => setDeleted(id, now()),
    restore: (id) => setDeleted(id, null),
    observed: () =>
      list().flatMap(({ composition, system, label, phaseClass, singlePhase }) =>
        label === null ? [] : [{ composition, system, phases: label, phaseClass, singlePhase }],
      ),
  };
}

/**
 * What follows from an entry that was kept. An earlier release read nothing of what an entry says of materials of its
 * sheet, and kept what is refused today: one such melt must not keep all others from being told.
 */
function followingFrom(entry: MeltEntry, sheets: ChargeSheets): Following {
  const sheet = sheetOf(entry, sheets);
  try {
    return followingOn(entry, sheet);
  } catch (error) {
    if (!(error instanceof ProblemError) || sheet === null) throw error;
    return followingOn(leftToSheet(entry, sheet), sheet);
  }
}

function followingOn(entry: MeltEntry, sheet: ChargeSheet | null): Following {
  const whole = meltOf(entry, sheet);
  const { lost: _, expectedIngot: __, ...melt } = whole;
  const phaseClass = melt.label === null ? null : phaseClassOf(melt.label);
  const singlePhase = phaseClass === null ? null : phaseClass === 'fcc' || phaseClass === 'bcc';
  const density = entry.density === null ? null : valueFor('density', whole.composition);
  return { ...melt, phaseClass, singlePhase, doubts: meltDoubts(entry, sheet, { melt: whole, density }) };
}

const now = () => new Date().toISOString();

/** The entry as it is kept, once all of it is possible; the number of its charge sheet in its one spelling. */
function checked(entry: MeltEntry, sheets: ChargeSheets): MeltEntry {
  const sheet = sheetOf(entry, sheets);
  meltOf(entry, sheet);
  return { ...entry, name: entry.name.trim(), charge: sheet?.number ?? null };
}

function sheetOf({ charge }: MeltEntry, sheets: ChargeSheets) {
  return charge === null ? null : sheets.view(charge, '/charge');
}
