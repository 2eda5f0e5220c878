import type { Connection } from '../sharing/connections.ts';

/** The column of a quantity. The prefix keeps ids apart from the columns that every candidate has. */
export function columnOf(quantity: string): string {
  if (!/^[a-z][A-Za-z0-9]*$/.test(quantity)) throw new RangeError(`"${quantity}" is no id of a quantity`);
  return `q_${quantity}`;
}

/** Adds the columns that are not there yet; candidates stored before have no value in them. */
export function addColumns(connection: Connection, quantities: readonly string[]): void {
  const columns = missingColumns(connection, quantities);
  if (columns.length === 0) return;
  // At one stroke: committing each of dozens takes 4 of the 29 ms in which a new database opens.
  connection.transaction(() => {
    for (const column of columns) connection.exec(`alter table candidate add column ${column} real`);
  })();
}

/** The columns of these quantities that are not there. */
export function missingColumns(connection: Connection, quantities: readonly string[]): string[] {
  const names = connection.prepare("select lower(name) from pragma_table_info('candidate')").pluck().all();
  const present = new Set(names as string[]);
  // SQLite's column names do not tell capitals from small letters.
  return quantities.map(columnOf).filter((column) => !present.has(column.toLowerCase()));
}
