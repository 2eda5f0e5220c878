/** Whose candidates are meant: the search's number, how many it kept, and the ids of its quantities. */
export interface CandidateSet {
  search: number;
  kept: number;
  columns: readonly string[];
  /** How their values are called where candidates are told, in the order of the columns; as the columns where left out. */
  ids?: readonly string[];
}
