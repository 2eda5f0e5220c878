import type { ImportKind } from '@tiegel/contract';

/** One thing that a file says: by what it is told from others, what is shown of it, and itself. */
export interface Entry<Value = unknown> {
  key: string;
  /** in one line; equal exactly where it says the same */
  shown: string;
  value: Value;
}

/** What can be brought in: how a file of it is read, and what its rows say. `Data` is what is stored of a whole file. */
export interface ImportKindOf<Data, Value = unknown> {
  id: ImportKind;
  /** Throws a ProblemError with every fault; faults of rows are pointed at as /rows/3 or /rows/3/value. */
  read(text: string): Data;
  /** In the order of the rows. */
  entries(data: Data): Entry<Value>[];
  /** A file that `read` reads as the same. */
  csv(data: Data): string;
  /** What a file takes the place of: the id of a column, '' for all of its kind. */
  subject(data: Data): string;
  /** What it is called where nobody said. */
  name(data: Data): string;
  /** A row as it reads without the others: some say in the first what holds for all. */
  alone(header: readonly string[], row: readonly string[], first: readonly string[]): string[];
}

/** What most kinds have in common. */
export const usualKind = {
  subject: () => '',
  name: () => '',
  alone: (_header: readonly string[], row: readonly string[]) => [...row],
};
