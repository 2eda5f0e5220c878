import type { Plan } from '@tiegel/contract';
import { lateQuantities } from '@tiegel/insight/late';
import { quantities } from '@tiegel/screening';

/** Columns of element data and figures of merit of one's own that a search may have together. */
const mostOwn = 24;

const closed = quantities.map(({ id }) => id);
const late = lateQuantities.map(({ id }) => id);
const slots = Array.from({ length: mostOwn }, (_, place) => `own${place + 1}`);

/**
 * What a store must be opened with: a column for each quantity, closed or late, and some for
 * whatever is somebody's own, which other searches use for theirs.
 */
export const candidateColumns: readonly string[] = [...closed, ...late, ...slots];

/** The ids of what a search's candidates have: every closed quantity, the late ones that it limits, its own. */
export function columnsOf({ specification, columns = [] }: Plan): string[] {
  const limited = (specification.keptOnly ?? []).map(({ quantity }) => quantity);
  const own = [...columns.map(({ id }) => id), ...Object.keys(specification.lets ?? {})];
  return [...closed, ...late.filter((id) => limited.includes(id)), ...own];
}

/** How the store calls a search's quantities: by their ids, but its own by the columns kept for such. */
export interface StoredNames {
  /** in the order of the search's columns */
  all: readonly string[];
  of(id: string): string;
}

/** @param columns the ids that a search's candidates have, as columnsOf gave them */
export function storedNames(columns: readonly string[]): StoredNames {
  const own = columns.filter((id) => !closed.includes(id) && !late.includes(id));
  const names = new Map(columns.map((id) => [id, own.includes(id) ? slots[own.indexOf(id)]! : id]));
  return { all: [...names.values()], of: (id) => names.get(id) ?? id };
}
