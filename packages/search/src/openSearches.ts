import { isDeepStrictEqual } from 'node:util';
import { type CandidateQuery, problem, type SearchView, type Size } from '@tiegel/contract';
import { demoPrices, type PriceList } from '@tiegel/elements';
import type { ChunkQueue } from '@tiegel/queue';
import type { SearchChange, SearchRecord, Store } from '@tiegel/store';
import { candidateSet, checkQuery, gridParts } from './candidateQueries.ts';
import { checkForm, checkSearch } from './check.ts';
import { estimates } from './estimate.ts';
import type { Searches } from './searches.ts';
import { secondsPerChunk, start } from './start.ts';
import { isOver, type SearchEvent, stateAfter } from './states.ts';
import { textOf } from './textOf.ts';
import { viewOf } from './viewOf.ts';
import { watchers } from './watchers.ts';
import { work } from './work.ts';

/** MAX_POINTS where the configuration says nothing. */
export const DEFAULT_MAX_POINTS = 1e13;

/**
 * What the searches of a process are made of.
 *
 * - `store`: from openStore of packages/store, told the ids of `quantities` of packages/screening.
 * - `queue`: how chunks reach workers.
 * - `prices`: the list in force until somebody enters another with `replacePrices` (an entered
 *   one survives restarts and goes before this); null for none. Default: the demonstration list.
 * - `maxPoints`: a search of more grid points is refused with its count.
 * - `pointsPerChunk`: how many points a worker gets at a time; left out, as many as it scores in a second.
 *
 * Whoever opened store and queue closes them, in this order: searches, queue, store.
 */
export interface SearchesOptions {
  store: Store;
  queue: ChunkQueue;
  prices?: PriceList | null;
  maxPoints?: number;
  pointsPerChunk?: number;
}

/** Takes up every unfinished search of the store and answers to requests until it is closed. */
export async function openSearches(options: SearchesOptions): Promise<Searches> {
  const { store, queue, maxPoints = DEFAULT_MAX_POINTS } = options;
  const watching = watchers((id) => ({ view: view(id), sequence: known(id).sequence }));
  const working = work(store, queue, watching.changed);
  const rates = estimates();
  const waitingForEnd = new Set<(reason: unknown) => void>();

  const prices = () =>
    (store.priceLists.inForce() as PriceList | null) ??
    (options.prices === undefined ? demoPrices : options.prices);

  /** A search as it stands: one whose storing the store refused is paused, whatever it could still write down. */
  function known(id: string): SearchRecord {
    const record = store.searches.find(id);
    if (record === null) throw problem('search/unknown', { id });
    return standing(record);
  }

  function standing(record: SearchRecord): SearchRecord {
    const trouble = working.trouble(record.id);
    return trouble === undefined ? record : { ...record, state: 'paused', reason: textOf(trouble) };
  }

  function view(id: string): SearchView {
    return viewOf(known(id), working.underway(id));
  }

  /** An act of a person: writes down the state that follows, then does what belongs to it. */
  function act(
    id: string,
    event: SearchEvent,
    change: SearchChange,
    then: (record: SearchRecord) => void,
  ): SearchView {
    const record = known(id);
    const state = stateAfter(record.state, event);
    if (state === null) return view(id);
    const write = event === 'cancel' ? store.searches.conclude : store.searches.change;
    write(record.number, { state, reason: null, ...change });
    working.forgetTrouble(id);
    then(record);
    watching.changed(id, 'state');
    return view(id);
  }

  async function size(request: unknown): Promise<Size> {
    const checked = checkSearch(request, prices(), maxPoints);
    const { systems, points, question, notices } = checked;
    const workers = await queue.workers();
    const seconds = workers === 0 ? null : points / (rates.pointsPerSecond(checked) * workers);
    return { systems, points, seconds, workers, question, notices };
  }

  /** The search that a key made before, if it did; a key that comes with another question is refused. */
  function madeBefore(request: unknown, key: string | null): SearchRecord | null {
    const { specification } = checkForm(request);
    const record = key === null ? null : store.searches.findByIdempotencyKey(key);
    if (record !== null && !isDeepStrictEqual(record.specification, specification)) {
      throw problem('search/key-reused', { id: record.id });
    }
    return record;
  }

  async function submit(request: unknown, { idempotencyKey = null as string | null } = {}) {
    const since = performance.now();
    const workers = await queue.workers();
    // From here on nothing waits: two requests with one key cannot both find nothing.
    const before = madeBefore(request, idempotencyKey);
    if (before !== null) return { id: before.id, created: false };
    const list = prices();
    const checked = checkSearch(request, list, maxPoints);
    const pointsPerChunk = options.pointsPerChunk ?? rates.pointsPerSecond(checked) * secondsPerChunk;
    const record = start(checked, store, { prices: list, idempotencyKey, pointsPerChunk, workers, since });
    working.carry(record);
    return { id: record.id, created: true };
  }

  function candidates(id: string, query: CandidateQuery) {
    const record = known(id);
    const set = candidateSet(record);
    checkQuery(query, set.columns);
    const { passed, points } = record.counts;
    return { ...store.candidates.page(set, query), among: { kept: set.kept, passed, points } };
  }

  function candidate(id: string, composition: string) {
    const record = known(id);
    const set = candidateSet(record);
    const sought = gridParts(composition, record);
    const found = sought && store.candidates.find(set, sought.symbols, sought.parts);
    if (found === null) throw problem('candidate/unknown', { composition });
    return found;
  }

  async function finished(id: string): Promise<SearchView> {
    const { promise, resolve, reject } = Promise.withResolvers<SearchView>();
    const stop = watching.watch(id, (now) => {
      const trouble = working.trouble(id);
      if (isOver(now.state)) resolve(now);
      else if (trouble !== undefined) reject(trouble);
    });
    waitingForEnd.add(reject);
    return promise.finally(() => {
      waitingForEnd.delete(reject);
      stop();
    });
  }

  for (const record of store.searches.list().toReversed()) {
    if (record.state === 'waiting' || record.state === 'running') working.carry(record);
  }

  return {
    ...{ size, submit, view, candidates, candidate, finished, prices, watch: watching.watch },
    list: () => store.searches.list().map((record) => viewOf(standing(record), working.underway(record.id))),
    pause: (id) => act(id, 'pause', {}, () => working.stop(id)),
    cancel: (id) => act(id, 'cancel', { finishedAt: new Date().toISOString() }, () => working.stop(id)),
    resume: (id) =>
      act(id, 'resume', { finishedAt: null }, ({ number }) => {
        store.ledger.forgetFailures(number);
        working.carry(known(id));
      }),
    export(id, query) {
      const set = candidateSet(known(id));
      checkQuery(query, set.columns);
      return { head: { search: view(id), columns: set.columns }, rows: store.candidates.stream(set, query) };
    },
    replacePrices: (list) => store.priceLists.enter(list, new Date().toISOString()),
    async close() {
      await working.close();
      watching.close();
      for (const reject of waitingForEnd) reject(problem('search/closed'));
    },
  };
}
