import type { ProblemError } from '@tiegel/contract';
import { type ProblemCode, problem } from '@tiegel/contract/terms';
import Database from 'better-sqlite3';
import { whenFree } from './sharing/whenFree.ts';

/** SQLite's primary result codes that have an answer of their own; extended codes begin with them. */
const codes: readonly (readonly [string, ProblemCode])[] = [
  ['SQLITE_FULL', 'store/full'],
  ['SQLITE_BUSY', 'store/busy'],
  ['SQLITE_LOCKED', 'store/busy'],
  ['SQLITE_CORRUPT', 'store/damaged'],
  ['SQLITE_NOTADB', 'store/foreign'],
  ['SQLITE_CANTOPEN', 'store/unreachable'],
  // Reading too writes beside the file, what several who are at work know of each other; see readStore.
  ['SQLITE_READONLY', 'store/read-only'],
];

/** What SQLite said as a problem of the table, with the file named; any other error as it is. */
export function storeProblem(error: unknown, file: string): unknown {
  if (!(error instanceof Database.SqliteError)) return error;
  const code = codes.find(([start]) => error.code.startsWith(start))?.[1] ?? 'store/failed';
  return told(problem(code, { file, why: `${error.message} (${error.code})` }), error);
}

function told(answer: ProblemError, cause: Error): ProblemError {
  answer.cause = cause;
  return answer;
}

/**
 * The same functions, which wait as whenFree does while another process has the lock, and whose
 * SQLite errors are problems of the table.
 */
export function withStoreProblems<Part extends object>(part: Part, file: string, patienceMs: number): Part {
  const guarded = Object.entries(part).map(([name, value]) => [
    name,
    typeof value === 'function' ? guard(value as (...values: unknown[]) => unknown, file, patienceMs) : value,
  ]);
  return Object.fromEntries(guarded) as Part;
}

function guard(
  act: (...values: unknown[]) => unknown,
  file: string,
  patienceMs: number,
): (...values: unknown[]) => unknown {
  return (...values) => {
    try {
      return whenFree(() => act(...values), patienceMs);
    } catch (error) {
      throw storeProblem(error, file);
    }
  };
}
