import type { Connection } from '../sharing/connections.ts';
import { frontColumn, hashColumn, presenceColumn } from './candidateArrays.ts';
import { columnOf } from './candidateColumns.ts';
import { type ColumnBlocks, columnBlocks } from './columnBlocks.ts';
import { compositionHash } from './compositionHash.ts';

/**
 * Kept grid points on their way into the store, in the order of rank. NaN stands for what is
 * missing.
 */
export interface NewCandidates {
  /** Ranks run on from here without gaps; the first of a search is 1. */
  firstRank: number;
  /** The elements of each, alphabetical, with their parts of the grid. */
  symbols: readonly (readonly string[])[];
  parts: readonly ArrayLike<number>[];
  scores: Float64Array;
  /** By the id of the quantity; one that is left out is missing. */
  values: Readonly<Record<string, Float64Array>>;
  /** 1 for members of the Pareto front, where the search asks for it. */
  front?: Uint8Array;
}

/** Adds candidates as rows and as blocks of columns, in one transaction. */
export function candidateInsertion(connection: Connection): (search: number, batch: NewCandidates) => void {
  const blocks = columnBlocks(connection);
  const statements = new Map<string, ReturnType<Connection['prepare']>>();

  function statementFor(ids: readonly string[]) {
    const key = ids.join();
    let statement = statements.get(key);
    if (!statement) {
      const names = ids.map(columnOf);
      statement = connection.prepare(
        `insert into candidate (search, rank, system, parts, score, front${names.map((name) => `, ${name}`).join('')})
         values (?, ?, ?, ?, ?, ?${', ?'.repeat(names.length)})`,
      );
      statements.set(key, statement);
    }
    return statement;
  }

  const insert = connection.transaction((search: number, batch: NewCandidates) => {
    const { firstRank, symbols, parts, scores, values, front } = batch;
    const ids = Object.keys(values);
    for (const id of ids) refuseInfinite(values[id]!, id);
    refuseInfinite(scores, 'score');
    const columns = ids.map((id) => values[id]!);
    const statement = statementFor(ids);
    const hashes = new Uint32Array(scores.length);
    for (let at = 0; at < scores.length; at += 1) {
      const system = symbols[at]!.join(' ');
      const amounts = Array.prototype.join.call(parts[at]!, ' ');
      hashes[at] = compositionHash(system, amounts);
      const numbers = columns.map((column) => orMissing(column[at]!));
      const onFront = front ? front[at]! : null;
      statement.run([search, firstRank + at, system, amounts, orMissing(scores[at]!), onFront, ...numbers]);
    }
    if (scores.length > 0) writeBlocks(blocks, search, batch, hashes);
  });
  return (search, batch) => insert.immediate(search, batch);
}

function writeBlocks(
  blocks: ColumnBlocks,
  search: number,
  { firstRank, symbols, values, front }: NewCandidates,
  hashes: Uint32Array,
): void {
  const write = (name: string, numbers: Float64Array | Uint32Array | Uint8Array) =>
    blocks.write(search, name, firstRank - 1, numbers);
  write(hashColumn, hashes);
  if (front) write(frontColumn, front);
  for (const [id, column] of Object.entries(values)) write(id, column);
  for (const [symbol, presence] of presences(symbols)) write(presenceColumn(symbol), presence);
}

function presences(systems: readonly (readonly string[])[]): Map<string, Uint8Array> {
  const found = new Map<string, Uint8Array>();
  for (const [at, system] of systems.entries()) {
    for (const symbol of system) {
      let presence = found.get(symbol);
      if (!presence) {
        presence = new Uint8Array(systems.length);
        found.set(symbol, presence);
      }
      presence[at] = 1;
    }
  }
  return found;
}

function orMissing(value: number): number | null {
  return Number.isNaN(value) ? null : value;
}

/** Infinity is no value, and in JSON it would be none either. */
function refuseInfinite(column: Float64Array, what: string): void {
  for (const value of column) {
    if (value === Infinity || value === -Infinity) throw new RangeError(`${what} is ${value}`);
  }
}
