/** Rows in arrays of `size` (the last one shorter), read no further ahead than that. */
export function* inBatches<Row>(rows: Iterable<Row>, size: number): Generator<Row[]> {
  let batch: Row[] = [];
  for (const row of rows) {
    batch.push(row);
    if (batch.length === size) {
      yield batch;
      batch = [];
    }
  }
  if (batch.length > 0) yield batch;
}
