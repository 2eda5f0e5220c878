import type { Direction, TableColumn } from './tableColumn.ts';

/** What a table of data and its cards are given. */
export interface RowsProps<Row> {
  caption: string;
  /** the first one heads a row */
  columns: readonly TableColumn<Row>[];
  rows: readonly Row[];
  /** rows there are in all, where more are fetched as they come into sight */
  total?: number;
  /** where a row leads */
  addressOf: (row: Row) => string;
  keyOf: (row: Row) => string;
  /** tells one selection of rows from another */
  selection: string;
  /** a column's id; '' for the order in which the rows come */
  order: string;
  direction: Direction;
  /** null where the rows come sorted as they are */
  onOrder: ((order: string, direction: Direction) => void) | null;
  /** how many columns a card tells on a small screen, beside the one that is sorted by */
  onCard: number;
  /** called when the rows that are there come to their end: more are fetched, all of them sorted where they come from */
  onEnd?: () => void;
}
