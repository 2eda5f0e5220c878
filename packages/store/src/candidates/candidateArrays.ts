import type { CandidateQuery } from '@tiegel/contract';
import type { Connections } from '../sharing/connections.ts';
import { untilFree } from '../sharing/untilFree.ts';
import { columnOf } from './candidateColumns.ts';
import type { CandidateSet } from './candidateSet.ts';
import { columnBlocks, type Numbers } from './columnBlocks.ts';
import { columnCache } from './columnCache.ts';
import { compositionHash } from './compositionHash.ts';
import { reversedPlaces } from './reversedPlaces.ts';
import { sortedPlaces } from './sortedPlaces.ts';

type Direction = CandidateQuery['direction'];

/** So many places of an order are one block, about a page of SQLite's: a page of candidates is read from one or two. */
const placesInBlock = 1_000;
/** So many blocks, half a megabyte, are stored at a time. */
const blocksAtOnce = 128;

/** Names of the columns that are no quantity; ids of quantities have no brackets. */
export const hashColumn = '(composition)';
export const frontColumn = '(front)';
export const presenceColumn = (symbol: string) => `(has ${symbol})`;
const orderColumn = (quantity: string, direction: Direction) => `(order ${quantity} ${direction})`;

/** The candidates of searches as arrays by rank less one, read when they are asked for and held as long as there is room. */
export interface CandidateArrays {
  /** Values of a quantity, NaN where there is none. */
  values(set: CandidateSet, quantity: string): Float64Array;
  /** 1 where a candidate has the element. */
  presence(set: CandidateSet, symbol: string): Uint8Array;
  /** 1 for the members of the Pareto front. */
  front(set: CandidateSet): Uint8Array;
  hashes(set: CandidateSet): Uint32Array;
  /** The order by a quantity: at each place a rank less one. In steps, for it may have to be made, told which share of it is done. */
  order(set: CandidateSet, quantity: string, direction: Direction): Generator<number, Uint32Array>;
  /** Whether an order need not be made: it is held, or stored. */
  isMade(set: CandidateSet, quantity: string, direction: Direction): boolean;
  /** Whether an order lies in the database, for as long as its candidates do. */
  isStored(set: CandidateSet, quantity: string, direction: Direction): boolean;
  /** A stretch of an order that was made; null where it was not. */
  stretch(
    set: CandidateSet,
    quantity: string,
    direction: Direction,
    low: number,
    high: number,
  ): Uint32Array | null;
  /** What was worked out of filters, if it is still held: see meeting.ts and candidateLine.ts. */
  held(set: CandidateSet, name: string): Numbers | undefined;
  hold(set: CandidateSet, name: string, found: Numbers): void;
  forget(search: number): void;
  /** The same where its candidates are other ones from now on: what was on its way into the database is not stored. */
  drop(search: number): void;
}

/** @param mostBytes up to which columns are held */
export function candidateArrays(
  { main: connection, patienceMs }: Pick<Connections, 'main' | 'patienceMs'>,
  mostBytes: number,
): CandidateArrays {
  const blocks = columnBlocks(connection);
  const cache = columnCache((mostBytes * 3) / 4);
  // Apart, so that whoever turns the pages of a filter finds it, whatever columns come and go.
  const filtered = columnCache(mostBytes / 4);

  function read<Column extends Float64Array | Uint32Array | Uint8Array>(
    { search }: CandidateSet,
    name: string,
    empty: () => Column,
    fromRows: (column: Column) => void,
  ): Column {
    const known = cache.get(search, name);
    if (known) return known as Column;
    const column = empty();
    if (blocks.has(search, hashColumn)) blocks.read(search, name, column);
    else fromRows(column);
    return cache.put(search, name, column);
  }

  /** Shows something of every row of a search, for candidates that were stored without columns. */
  function eachRow<Row>({ search, kept }: CandidateSet, what: string, show: (row: Row, at: number) => void) {
    const rows = connection.prepare(
      `select rank, ${what} from candidate indexed by candidate_rank where search = ? and rank <= ?`,
    );
    for (const row of rows.iterate(search, kept)) show(row as Row, (row as { rank: number }).rank - 1);
  }

  function values(set: CandidateSet, quantity: string): Float64Array {
    const column = columnOf(quantity);
    return read(
      set,
      quantity,
      () => new Float64Array(set.kept).fill(Number.NaN),
      (into) =>
        eachRow<{ value: number | null }>(set, `${column} as value`, ({ value }, at) => {
          into[at] = value ?? Number.NaN;
        }),
    );
  }

  /** Of each search the token of its candidates, with which orders are stored. */
  const keeping = new Map<number, object>();

  /** null: it was not made, or not stored whole */
  function storedOrder({ search, kept }: CandidateSet, name: string): Uint32Array | null {
    if (!blocks.has(search, name)) return null;
    const order = new Uint32Array(kept);
    return blocks.read(search, name, order) ? order : null;
  }

  /**
   * Stores an order behind the answer that needed it, some blocks at a time: others are answered in
   * between. The first block comes last, so that what is not whole is not there. One that cannot be
   * stored, on a full disk or when all ends, serves as long as it is held.
   */
  function keepLater(search: number, name: string, order: Uint32Array): void {
    const mine = keeping.get(search) ?? {};
    keeping.set(search, mine);
    let block = Math.ceil(order.length / placesInBlock);
    const writeSome = () => {
      for (const end = Math.max(0, block - blocksAtOnce); block > end; ) {
        block -= 1;
        const first = block * placesInBlock;
        blocks.write(search, name, first, order.subarray(first, first + placesInBlock));
      }
    };
    const goOn = async () => {
      if (!(await untilFree(connection, { atMostMs: patienceMs }))) return;
      if (!connection.open || keeping.get(search) !== mine) return;
      try {
        connection.transaction(writeSome).immediate();
      } catch {
        return;
      }
      if (block > 0) setImmediate(goOn);
    };
    setImmediate(goOn);
  }

  function forget(search: number): void {
    cache.forget(search);
    filtered.forget(search);
  }

  return {
    values,
    presence: (set, symbol) =>
      read(
        set,
        presenceColumn(symbol),
        () => new Uint8Array(set.kept),
        (into) =>
          eachRow<{ system: string }>(set, 'system', ({ system }, at) => {
            into[at] = Number(system.split(' ').includes(symbol));
          }),
      ),
    front: (set) =>
      read(
        set,
        frontColumn,
        () => new Uint8Array(set.kept),
        () => {},
      ),
    hashes: (set) =>
      read(
        set,
        hashColumn,
        () => new Uint32Array(set.kept),
        (into) =>
          eachRow<{ system: string; parts: string }>(set, 'system, parts', ({ system, parts }, at) => {
            into[at] = compositionHash(system, parts);
          }),
      ),
    *order(set, quantity, direction) {
      const name = orderColumn(quantity, direction);
      const known = cache.get(set.search, name);
      if (known) return known as Uint32Array;
      const stored = storedOrder(set, name);
      if (stored) return cache.put(set.search, name, stored);
      const column = values(set, quantity);
      yield 0;
      const otherName = orderColumn(quantity, direction === 'asc' ? 'desc' : 'asc');
      const other =
        (cache.get(set.search, otherName) as Uint32Array | undefined) ?? storedOrder(set, otherName);
      const order = yield* other ? reversedPlaces(other, column) : sortedPlaces(column, direction);
      keepLater(set.search, name, order);
      return cache.put(set.search, name, order);
    },
    isMade({ search }, quantity, direction) {
      const name = orderColumn(quantity, direction);
      return cache.get(search, name) !== undefined || blocks.has(search, name);
    },
    isStored: ({ search }, quantity, direction) => blocks.has(search, orderColumn(quantity, direction)),
    stretch({ search }, quantity, direction, low, high) {
      const name = orderColumn(quantity, direction);
      const known = cache.get(search, name) as Uint32Array | undefined;
      if (known) return known.subarray(low, high);
      const part = new Uint32Array(Math.max(0, high - low));
      return blocks.has(search, name) && blocks.read(search, name, part, low) ? part : null;
    },
    held: ({ search }, name) => filtered.get(search, name),
    hold: ({ search }, name, found) => void filtered.put(search, name, found),
    forget,
    drop(search) {
      keeping.delete(search);
      forget(search);
    },
  };
}
