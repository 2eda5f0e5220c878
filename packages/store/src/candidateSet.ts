/** Whose candidates are meant: the search's number, how many it kept, and the ids of its quantities. */
export interface CandidateSet {
  search: number;
  kept: number;
  columns: readonly string[];
}
