import type { Connection } from '../sharing/connections.ts';
import type { CandidateArrays } from './candidateArrays.ts';
import type { CandidateRows } from './candidateRows.ts';

/** Where candidates are read from. */
export interface CandidateSource {
  connection: Connection;
  arrays: CandidateArrays;
  rows: CandidateRows;
}
