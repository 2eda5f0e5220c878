import type { Connection } from './connections.ts';
import type { Orderings } from './orderings.ts';

/** Whose candidates are meant: the search's number, how many it kept, and the ids of its quantities. */
export interface CandidateSet {
  search: number;
  kept: number;
  columns: readonly string[];
}

/** Where candidates are read from, and up to how many rows are read and sorted rather than sought. */
export interface CandidateSource {
  connection: Connection;
  orderings: Orderings;
  readWhole: number;
}
