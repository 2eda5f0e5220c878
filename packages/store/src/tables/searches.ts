import type {
  Chunk,
  Counts,
  Plan,
  Schedule,
  SearchSpecification,
  SearchState,
  SearchView,
} from '@tiegel/contract';
import { newId } from '../newId.ts';
import type { Connection } from '../sharing/connections.ts';

/** A search as it is kept. `number` is its key inside the store, `sequence` grows by one with each change. */
export interface SearchRecord {
  number: number;
  id: string;
  idempotencyKey: string | null;
  specification: SearchSpecification;
  question: string;
  /** ids of the quantities that its candidates have */
  columns: string[];
  /** element columns of somebody's own that it reads, without their values */
  ownColumns: NonNullable<Plan['columns']>;
  prices: SearchView['prices'];
  /** numbers of the imports that it was planned with */
  imports: number[];
  dataVersion: string;
  engineVersion: string;
  /** grid points in all, and systems; counts.points are the points scored so far */
  systems: number;
  points: number;
  state: SearchState;
  reason: string | null;
  notices: string[];
  sequence: number;
  counts: Counts;
  kept: number;
  bestSoFar: SearchView['bestSoFar'];
  /** null where nobody said */
  schedule: Schedule | null;
  /** from handing out the first chunk to taking the last outcome, without pauses */
  activeSeconds: number;
  preparationSeconds: number;
  storingSeconds: number | null;
  /** instants, UTC, ISO 8601 */
  createdAt: string;
  finishedAt: string | null;
}

/** What a search is made with; the rest starts at nothing. */
export interface NewSearch {
  idempotencyKey: string | null;
  plan: Plan;
  question: string;
  columns: readonly string[];
  prices: SearchView['prices'];
  /** none where it is left out */
  imports?: readonly number[];
  schedule?: Schedule;
  systems: number;
  points: number;
  notices: readonly string[];
  preparationSeconds: number;
  createdAt: string;
}

export type SearchChange = Partial<
  Pick<
    SearchRecord,
    | 'state'
    | 'reason'
    | 'notices'
    | 'counts'
    | 'kept'
    | 'bestSoFar'
    | 'schedule'
    | 'activeSeconds'
    | 'storingSeconds'
    | 'finishedAt'
  >
>;

/** The searches and their plans. */
export interface SearchTable {
  /** Keeps a search and its chunks, in one transaction, as waiting. */
  create(search: NewSearch, chunks: Iterable<Chunk>): SearchRecord;
  /** To be read only: who asks again gets the same object as long as nothing changes. */
  find(id: string): SearchRecord | null;
  findByIdempotencyKey(key: string): SearchRecord | null;
  /** Newest first. */
  list(): SearchRecord[];
  plan(number: number): Plan;
  /** Changes what is given and counts the sequence on. */
  change(number: number, change: SearchChange): void;
  /** The last change of a search: what its chunks found, which nobody needs any more, goes in the same transaction. */
  conclude(number: number, change: SearchChange): void;
}

/** Searches that are kept as they were read last: a page of candidates asks for its search thrice. */
const mostRead = 16;

/** Column and way of writing of each thing that may change. */
const changeable: Record<keyof SearchChange, [column: string, write: (value: never) => unknown]> = {
  state: ['state', same],
  reason: ['reason', same],
  notices: ['notices', JSON.stringify],
  counts: ['counts', JSON.stringify],
  kept: ['kept', same],
  bestSoFar: ['best_so_far', JSON.stringify],
  schedule: ['schedule', JSON.stringify],
  activeSeconds: ['active_seconds', same],
  storingSeconds: ['storing_seconds', same],
  finishedAt: ['finished_at', same],
};

/** A row as it is selected: what is not a number or a text is JSON. */
type StoredSearch = Omit<
  SearchRecord,
  | 'specification'
  | 'columns'
  | 'ownColumns'
  | 'prices'
  | 'imports'
  | 'notices'
  | 'counts'
  | 'bestSoFar'
  | 'schedule'
> & {
  specification: string;
  columns: string;
  ownColumns: string | null;
  prices: string | null;
  imports: string | null;
  notices: string;
  counts: string;
  bestSoFar: string | null;
  schedule: string | null;
};

const record = `select number, id, idempotency_key as idempotencyKey, specification, question, columns, prices, imports,
  plan -> 'columns' as ownColumns, plan ->> 'dataVersion' as dataVersion, plan ->> 'engineVersion' as engineVersion, systems, points, state, reason,
  notices, sequence, counts, kept, best_so_far as bestSoFar, schedule, active_seconds as activeSeconds, preparation_seconds as preparationSeconds,
  storing_seconds as storingSeconds, created_at as createdAt, finished_at as finishedAt
  from search`;

export function searchTable(connection: Connection): SearchTable {
  const byId = connection.prepare(`${record} where id = ?`);
  const sequenceOf = connection.prepare('select sequence from search where id = ?').pluck();
  const lately = new Map<string, SearchRecord>();
  const byKey = connection.prepare(`${record} where idempotency_key = ?`);
  const all = connection.prepare(`${record} order by number desc`);
  const plan = connection.prepare('select plan from search where number = ?').pluck();
  const insert = connection.prepare(
    `insert into search (id, idempotency_key, specification, plan, question, columns, prices, imports, systems, points,
       state, notices, counts, schedule, preparation_seconds, created_at)
     values (@id, @idempotencyKey, @specification, @plan, @question, @columns, @prices, @imports, @systems, @points,
       'waiting', @notices, @counts, @schedule, @preparationSeconds, @createdAt)`,
  );
  const insertChunk = connection.prepare(
    `insert into chunk (search, ordinal, first_system, end_system, first_point, end_point, points)
     values (?, ?, ?, ?, ?, ?, ?)`,
  );
  const dropOutcomes = connection.prepare('delete from outcome where search = ?');

  const create = connection.transaction((search: NewSearch, chunks: Iterable<Chunk>) => {
    const id = newId(connection);
    const { lastInsertRowid } = insert.run(written(id, search));
    for (const chunk of chunks) {
      const { ordinal, firstSystem, endSystem, firstPoint, endPoint, points } = chunk;
      insertChunk.run(lastInsertRowid, ordinal, firstSystem, endSystem, firstPoint, endPoint, points);
    }
    return read(byId.get(id))!;
  });

  function change(number: number, changes: SearchChange): void {
    const keys = Object.keys(changes) as (keyof SearchChange)[];
    const columns = keys.map((key) => `${changeable[key][0]} = ?`);
    const values = keys.map((key) => changeable[key][1](changes[key] as never));
    connection
      .prepare(`update search set ${[...columns, 'sequence = sequence + 1'].join(', ')} where number = ?`)
      .run(...values, number);
  }
  const conclude = connection.transaction((number: number, last: SearchChange) => {
    change(number, last);
    dropOutcomes.run(number);
  });

  function find(id: string): SearchRecord | null {
    const sequence = sequenceOf.get(id);
    const known = lately.get(id);
    if (known !== undefined && known.sequence === sequence) return known;
    const found = sequence === undefined ? null : read(byId.get(id));
    lately.delete(id);
    if (found !== null) lately.set(id, found);
    for (const oldest of lately.keys()) {
      if (lately.size <= mostRead) break;
      lately.delete(oldest);
    }
    return found;
  }

  return {
    create: (search, chunks) => create.immediate(search, chunks),
    find,
    findByIdempotencyKey: (key) => read(byKey.get(key)),
    list: () => all.all().map((row) => read(row)!),
    plan: (number) => JSON.parse(plan.get(number) as string) as Plan,
    change,
    conclude: (number, last) => conclude.immediate(number, last),
  };
}

function same(value: unknown): unknown {
  return value;
}

function written(id: string, search: NewSearch): Record<string, unknown> {
  const { idempotencyKey, question, systems, points, preparationSeconds, createdAt } = search;
  const { limits, tally } = search.plan.specification;
  const counts: Counts = {
    ...{ systems, points: 0 },
    passed: tally === 'none' ? null : 0,
    passedEach: tally === 'each' ? limits.map(() => 0) : null,
    outside: tally === 'each' ? {} : null,
  };
  return {
    ...{ id, idempotencyKey, question, systems, points, preparationSeconds, createdAt },
    specification: JSON.stringify(search.plan.specification),
    plan: JSON.stringify(search.plan),
    columns: JSON.stringify(search.columns),
    prices: search.prices && JSON.stringify(search.prices),
    imports: JSON.stringify(search.imports ?? []),
    notices: JSON.stringify(search.notices),
    counts: JSON.stringify(counts),
    schedule: search.schedule === undefined ? null : JSON.stringify(search.schedule),
  };
}

function read(found: unknown): SearchRecord | null {
  if (found === undefined) return null;
  const row = found as StoredSearch;
  const {
    specification,
    columns,
    ownColumns,
    prices,
    imports,
    notices,
    counts,
    bestSoFar,
    schedule,
    ...same
  } = row;
  return {
    ...same,
    specification: JSON.parse(specification),
    columns: JSON.parse(columns),
    ownColumns: JSON.parse(ownColumns ?? '[]'),
    prices: prices === null ? null : JSON.parse(prices),
    imports: JSON.parse(imports ?? '[]'),
    notices: JSON.parse(notices),
    counts: JSON.parse(counts),
    bestSoFar: JSON.parse(bestSoFar ?? 'null'),
    schedule: JSON.parse(schedule ?? 'null'),
  };
}
