import { Writable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { exportFile } from '../../src/exports/exportFile.ts';
import type { Searches } from '../../src/index.ts';
import { candidates, exportOf, query } from '../fixtures/exportOf.ts';

/** Turns that the rest of the process has had. */
let turns = 0;
let next: NodeJS.Immediate;
const count = () => {
  turns += 1;
  next = setImmediate(count);
};
beforeEach(() => {
  turns = 0;
  next = setImmediate(count);
});
afterEach(() => clearImmediate(next));

test.each(['csv', 'ndjson', 'parquet', 'xlsx'] as const)(
  'while a reader takes %s as fast as it comes, all else has its turn every few hundred rows',
  async (format) => {
    const rows = 6000;
    const { head } = exportOf([]);
    const searches = {
      ready: async () => {},
      values: async () => ({ meeting: rows }),
      export: () => ({ head, rows: candidates(rows) }),
    } as unknown as Searches;
    const { file } = await exportFile(searches, { id: 'k3v9x2', query, format });
    // Takes all at once, as a socket does whose other end is quick.
    await pipeline(file, new Writable({ write: (_bytes, _encoding, done) => done() }));
    expect(turns).toBeGreaterThanOrEqual(rows / 300);
  },
);
