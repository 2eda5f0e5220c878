import type { Shortlist, ShortlistAct, ShortlistChange, TakenChange } from '@tiegel/contract';
import { type Fault, ProblemError, problem, shortlistOf } from '@tiegel/contract/terms';
import { formatComposition, parseAlloy } from '@tiegel/elements';
import { diversePick } from '@tiegel/insight';
import type { ShortlistTable } from '@tiegel/store';
import type { Searches } from '../searches.ts';

/** Candidates among which a pick is made: more would take seconds, and rank behind anyway. */
const mostConsidered = 1000;

/** What a pick is asked: how many of a search's candidates, and whether only the best of each system. */
export interface PickRequest {
  search: string;
  count: number;
  onePerSystem: boolean;
  by: string;
}

/** The shortlists of a laboratory: what people agree on with each other. */
export interface Shortlists {
  /** The newest first. */
  list(): Shortlist[];
  create(name: string, by: string): Shortlist;
  /** Throws shortlist/unknown. */
  view(id: string): Shortlist;
  /** Every change that was made, in the order of taking. Throws shortlist/unknown. */
  history(id: string): TakenChange[];
  /**
   * Takes changes, all or none; compositions may be written in any way. Throws shortlist/unknown,
   * and with the faults of every change: shortlist/no-entry, and as parseAlloy does.
   */
  change(id: string, changes: readonly ShortlistChange[]): Shortlist;
  /** Adds a spread of a search's candidates: see diversePick of packages/insight. Throws shortlist/unknown, and as Searches.candidates does. */
  pick(id: string, pick: PickRequest): Shortlist;
}

export function openShortlists(table: ShortlistTable, searches: Ranked): Shortlists {
  const known = (id: string) => {
    const start = table.find(id);
    if (start === null) throw problem('shortlist/unknown', { id });
    return start;
  };
  const view = (id: string) => shortlistOf(known(id), table.changes(id));
  const take = (id: string, changes: readonly ShortlistChange[]) => {
    table.take(id, changes, new Date().toISOString());
    return view(id);
  };
  return {
    list: () => table.list().map(({ id }) => view(id)),
    create(name, by) {
      const named: ShortlistChange = { key: 'name', by, seen: 0, act: { kind: 'rename', name } };
      return view(table.create(new Date().toISOString(), [named]).id);
    },
    view,
    history: (id) => table.changes(known(id).id),
    change: (id, changes) => take(id, checked(changes, view(id))),
    pick(id, { search, count, onePerSystem, by }) {
      const { sequence } = view(id);
      const ranked = bestOf(searches, search);
      const picked = diversePick(ranked, count, { onePerSystem }).map((place) => ranked[place]!);
      return take(
        id,
        picked.map((composition) => {
          const entry = formatComposition(composition);
          return { key: crypto.randomUUID(), by, seen: sequence, act: { kind: 'add', entry, search } };
        }),
      );
    },
  };
}

type Ranked = Pick<Searches, 'candidates'>;

function bestOf({ candidates }: Ranked, search: string) {
  const { items } = candidates(search, {
    ...{ ranges: [], has: [], without: [], order: 'rank', direction: 'asc', limit: mostConsidered },
  });
  return items.map(({ composition }) => composition);
}

/** The changes with canonical compositions. Throws with the faults of all of them. */
function checked(changes: readonly ShortlistChange[], list: Shortlist): ShortlistChange[] {
  const entries = new Set(list.entries.map(({ entry }) => entry));
  const faults: Fault[] = [];
  const canonical = changes.map((change, place): ShortlistChange => {
    const { act } = change;
    if (act.kind === 'rename') return change;
    const pointer = `/changes/${place}/act/entry`;
    try {
      const entry = formatComposition(parseAlloy(act.entry, { pointer }));
      if (act.kind === 'add') entries.add(entry);
      else if (!entries.has(entry)) throw problem('shortlist/no-entry', { entry }, pointer);
      return { ...change, act: { ...act, entry } as ShortlistAct };
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      faults.push(...error.faults);
      return change;
    }
  });
  if (faults.length > 0) throw new ProblemError(faults);
  return canonical;
}
