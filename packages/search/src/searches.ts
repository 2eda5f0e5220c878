import type {
  Candidate,
  CandidatePage,
  CandidateQuery,
  CandidateValues,
  Distributions,
  ElementUse,
  Schedule,
  SearchDistributions,
  SearchView,
  Size,
  TradeOff,
} from '@tiegel/contract';
import type { OwnColumn, PairValue, PriceList } from '@tiegel/elements';
import type { OrderInMaking } from './candidates/ordersInMaking.ts';
import type { KeptSystem } from './candidates/systemsOf.ts';
import type { Imports } from './imports/imports.ts';

/** What an export starts with: it says all that a result depends on. */
export interface ExportHead {
  search: SearchView;
  /** ids of the quantity columns, in order */
  columns: readonly string[];
}

/**
 * The life of every search in this process: the one thing that api and cli speak to. A request
 * is a specification as it came (unchecked JSON); what is wrong with it is thrown as a
 * ProblemError that carries every fault with its JSON pointer.
 */
export interface Searches {
  /** Checks, and counts systems and points exactly, with an estimate of the time on the workers present. */
  size(request: unknown): Promise<Size>;
  /** How quantities are distributed over the grid of a search, from a sample: see distributionsOf. */
  distributions(request: unknown): Distributions;
  /** Checks, plans and starts. The same idempotency key returns the search that it made first; with another specification, hours or priority it throws search/key-reused. */
  submit(
    request: unknown,
    options?: { idempotencyKey?: string; schedule?: Schedule },
  ): Promise<{ id: string; created: boolean }>;
  /** Newest first. */
  list(): SearchView[];
  /** Throws search/unknown. */
  view(id: string): SearchView;
  /** Each throws search/unknown and search/not-possible; asked of what is so already, it changes nothing. */
  pause(id: string): SearchView;
  /** Also takes up a failed search, and one that a program left when it ended, at its unfinished chunks. */
  resume(id: string): SearchView;
  cancel(id: string): SearchView;
  /** Works on a search between other hours, or before or behind others, from now on. Throws search/unknown. */
  schedule(id: string, schedule: Schedule): SearchView;
  /** Makes ready what a query of `candidates` or `export` needs, such as an order that nobody asked for yet, and lets everybody else be answered meanwhile. Throws as `candidates` does. */
  ready(id: string, query: CandidateQuery): Promise<void>;
  /** The orders of its candidates that `ready` is making, and how far each is. Throws search/unknown. */
  ordersInMaking(id: string): OrderInMaking[];
  /** Throws search/unknown, search/not-finished while nothing is stored yet, request/invalid for an unknown quantity or key. */
  candidates(id: string, query: CandidateQuery): CandidatePage;
  /** One kept candidate by its composition (see formatComposition of packages/elements). Throws search/unknown, search/not-finished, candidate/unknown, and as parseAlloy does. */
  candidate(id: string, composition: string): Candidate;
  /** The kept candidate of a rank, from 1. Throws search/unknown, search/not-finished, request/invalid for a rank that nothing has. */
  candidateAt(id: string, rank: number): Candidate;
  /** Streams the kept candidates that the query selects, in its order, without holding them; limit, key and row number of the query do not count. Throws as `candidates` does. */
  export(id: string, query: CandidateQuery): { head: ExportHead; rows: Iterable<Candidate> };
  /** Columns of values of the candidates that meet the query's filters, by rank; where they are more than `limit`, an even sample of them with all of the best. Throws as `candidates` does. */
  values(
    id: string,
    query: CandidateQuery,
    quantities: readonly string[],
    limit: number,
  ): Promise<CandidateValues>;
  /** In how many of those candidates each element is, and how much of it. Throws as `candidates` does. */
  elementUse(id: string, query: CandidateQuery): Promise<ElementUse>;
  /** The Pareto front of two quantities among those candidates. Throws as `candidates` does. */
  tradeOff(
    id: string,
    query: CandidateQuery,
    quantities: readonly [string, string],
    prefer: readonly ['low' | 'high', 'low' | 'high'],
  ): Promise<TradeOff>;
  /** How quantities lie over the search's grid (a sample of it), over what passes and over those candidates. Throws as `candidates` does. */
  searchDistributions(
    id: string,
    query: CandidateQuery,
    quantities: readonly string[],
  ): Promise<SearchDistributions>;
  /** The sets of elements of those candidates, in the order of the best of each. Throws as `candidates` does. */
  keptSystems(
    id: string,
    query: CandidateQuery,
  ): Promise<{ systems: KeptSystem[]; meeting: number; among: CandidatePage['among'] }>;
  /** Calls back at once with the search as it stands, then on each change (progress at most twice a second); returns how to stop. `sequence` grows by one each time a view changes and survives a restart. Throws search/unknown. */
  watch(id: string, listener: (view: SearchView, sequence: number) => void): () => void;
  /** Resolves when the search is done, cancelled or failed. Rejects with store/... when the store refuses what is found (the search is paused then), with search/closed when this is closed before. */
  finished(id: string): Promise<SearchView>;
  /** The price list in force; searches keep the one that they were planned with. */
  prices(): PriceList | null;
  /** The columns of element data of one's own that are in force; searches keep those that they were planned with. */
  columns(): OwnColumn[];
  /** The pair values of one's own that are in force; searches keep those that they were planned with. */
  pairs(): PairValue[];
  /** Data of one's own: brought in, withdrawn, in force. */
  imports: Imports;
  /** Stops dispatching, waits for the store, leaves unfinished searches to be resumed at the next start. */
  close(): Promise<void>;
}
