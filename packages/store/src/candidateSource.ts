import type { CandidateArrays } from './candidateArrays.ts';
import type { CandidateRows } from './candidateRows.ts';
import type { Connection } from './connections.ts';

/** Where candidates are read from. */
export interface CandidateSource {
  connection: Connection;
  arrays: CandidateArrays;
  rows: CandidateRows;
}
