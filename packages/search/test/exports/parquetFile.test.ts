import { once } from 'node:events';
import { buffer } from 'node:stream/consumers';
import { formatComposition } from '@tiegel/elements';
import { parquetMetadata, parquetReadObjects } from 'hyparquet';
import { expect, test } from 'vitest';
import { parquetFile } from '../../src/exports/parquetFile.ts';
import { candidateNumber, candidates, exportOf } from '../fixtures/exportOf.ts';

async function bytesOf(count: number): Promise<ArrayBuffer> {
  const bytes = await buffer(parquetFile(exportOf(candidates(count))));
  return bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
}

test('read back by another program, every row has the same numbers to the last bit', async () => {
  const count = 5200;
  const rows = await parquetReadObjects({ file: await bytesOf(count) });
  expect(rows).toHaveLength(count);
  rows.forEach((row, index) => {
    const { composition, quantities, rank, score } = candidateNumber(index + 1);
    const amounts = Object.fromEntries(
      ['Al', 'Co', 'Cr', 'Fe', 'Ni'].map((symbol) => [symbol, composition[symbol] ?? 0]),
    );
    expect(row).toEqual({
      rank,
      composition: formatComposition(composition),
      ...amounts,
      ...quantities,
      score,
    });
  });
});

test('groups of rows are small, and the file says what its rows depend on and their units', async () => {
  const file = parquetMetadata(await bytesOf(5200));
  expect(file.row_groups.map(({ num_rows }) => Number(num_rows))).toEqual([5000, 200]);
  const metadata = Object.fromEntries(file.key_value_metadata!.map(({ key, value }) => [key, value]));
  const { about } = exportOf([]);
  expect(metadata.search).toBe(about.search);
  expect(JSON.parse(metadata.specification!)).toEqual(about.specification);
  expect(JSON.parse(metadata.counts!)).toEqual(about.counts);
  expect(JSON.parse(metadata.units!)).toMatchObject({ Al: 'at.%', mixingEnthalpy: 'kJ/mol', cost: 'EUR/kg' });
});

test('an export of nothing is a file with columns and without rows', async () => {
  const file = parquetMetadata(await bytesOf(0));
  expect(Number(file.num_rows)).toBe(0);
  expect(file.schema.map(({ name }) => name)).toContain('sizeMismatch');
});

test('rows are read no further ahead than the reader takes them, and a reader that goes closes their source', async () => {
  let read = 0;
  let close = () => {};
  const closed = new Promise<void>((resolve) => {
    close = resolve;
  });
  const rows = (function* () {
    try {
      for (const candidate of candidates(40_000)) {
        read++;
        yield candidate;
      }
    } finally {
      close();
    }
  })();
  const file = parquetFile(exportOf(rows));
  await once(file, 'readable');
  expect(read).toBe(5000);
  file.destroy();
  await closed;
  expect(read).toBeLessThanOrEqual(10_000);
});
