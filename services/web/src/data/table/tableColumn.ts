import type { ReactNode } from 'react';

/** A column of a table of data: its head, what a cell shows, and the value behind it. */
export interface TableColumn<Row> {
  id: string;
  name: string;
  /** '' where it has none */
  symbol: string;
  /** as printed; '' for a plain number or words */
  unit: string;
  /** said of the head when it is pointed at */
  meaning: string;
  holds: 'numbers' | 'words';
  /** rem */
  width: number;
  /** what rows are sorted by and what a file holds, in full; null where there is none */
  value: (row: Row) => number | string | null;
  /** what is shown; the value as it is where left out */
  cell?: (row: Row) => ReactNode;
}

export type Direction = 'asc' | 'desc';
