/**
 * - `file`: the database file, made when it is not there; null for a temporary one that goes at close.
 * - `columns`: ids of the quantities that candidates have, as columns of their own; a new one is added at opening.
 */
export interface StoreOptions {
  file: string | null;
  columns: readonly string[];
}

export interface Store {
  close(): void;
}

/** Opens the one writer of a database file. */
export function openStore(_options: StoreOptions): Store {
  throw new Error('being written');
}
