import { useMemo } from 'react';
import { useNarrow } from '../../frame/useNarrow.ts';
import { DataCards } from './DataCards.tsx';
import { DataTable } from './DataTable.tsx';
import type { RowsProps } from './rowsProps.ts';
import { sortRows } from './sortRows.ts';

/** Rows of data, sorted: a table of which only what is in sight is drawn, on a small screen cards. */
export function DataRows<Row>(props: RowsProps<Row>) {
  const { rows, columns, order, direction, onEnd } = props;
  const narrow = useNarrow();
  const sorted = useMemo(
    () =>
      onEnd
        ? rows
        : sortRows(
            rows,
            columns.find(({ id }) => id === order),
            direction,
          ),
    [rows, columns, order, direction, onEnd],
  );
  return narrow ? <DataCards {...props} rows={sorted} /> : <DataTable {...props} rows={sorted} />;
}
