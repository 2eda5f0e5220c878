import type { CandidateArrays } from './candidateArrays.ts';
import type { CandidateRows } from './candidateRows.ts';
import type { Connection } from './connections.ts';

/** Whose candidates are meant: the search's number, how many it kept, and the ids of its quantities. */
export interface CandidateSet {
  search: number;
  kept: number;
  columns: readonly string[];
}

/** Where candidates are read from. */
export interface CandidateSource {
  connection: Connection;
  arrays: CandidateArrays;
  rows: CandidateRows;
}
