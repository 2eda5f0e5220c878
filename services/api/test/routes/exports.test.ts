import type { Candidate } from '@tiegel/contract';
import { formatComposition } from '@tiegel/elements';
import { parquetReadObjects } from 'hyparquet';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { fixtureSearch, type TestServer, testServer } from '../fixtures/testServer.ts';

const { specification: fixture, expected } = fixtureSearch('five-2.5pct-target');
const specification = { ...fixture, name: '=Härte & "Zähigkeit", a name of more than eight words' };
let server: TestServer;
let id: string;
let kept: Candidate[];
beforeAll(async () => {
  server = await testServer();
  id = (await server.search(specification)).id;
  kept = (await server.ask({ url: `/api/v1/searches/${id}/candidates?limit=1000` })).json().items;
});
afterAll(() => server.close());

const get = (query: string) => server.ask({ url: `/api/v1/searches/${id}/export?${query}` });

const types = {
  csv: 'text/csv; charset=utf-8',
  ndjson: 'application/x-ndjson',
  parquet: 'application/vnd.apache.parquet',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
};

test.each(Object.entries(types))('%s is offered as a file with a name of its own', async (format, type) => {
  const { statusCode, headers } = await get(`format=${format}`);
  expect(statusCode).toBe(200);
  expect(headers['content-type']).toBe(type);
  expect(headers['content-disposition']).toBe(
    `attachment; filename="h-rte-z-higkeit-a-name-of-more-${id}.${format}"`,
  );
});

test('every format holds every kept candidate, in order', async () => {
  expect(kept).toHaveLength(expected.candidates.length);
  const compositions = kept.map(({ composition }) => formatComposition(composition));

  const csv = (await get('format=csv')).body
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  expect(csv.slice(1).map((line) => line.split(',')[1])).toEqual(compositions);

  const [head, ...lines] = (await get('format=ndjson')).body
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(lines).toEqual(kept);
  expect(head.export).toMatchObject({ search: id, counts: expected.counts, kept: kept.length });
  expect(head.export.prices).toEqual({ currency: 'EUR', date: '2026-11-25', invented: true });

  const { rawPayload } = await get('format=parquet');
  const file = rawPayload.buffer.slice(rawPayload.byteOffset, rawPayload.byteOffset + rawPayload.byteLength);
  const rows = await parquetReadObjects({ file: file as ArrayBuffer });
  expect(rows.map(({ composition }) => composition)).toEqual(compositions);
  rows.forEach((row, index) => {
    expect(row).toMatchObject(kept[index]!.quantities);
  });
});

test('filters and order are those of the pages, and the file says which', async () => {
  const [head, ...rows] = (await get('format=ndjson&max.density=9&has=Mo&order=cost&direction=desc')).body
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  const passing = kept.filter(
    ({ quantities, composition }) => quantities.density! <= 9 && 'Mo' in composition,
  );
  expect(passing.length).toBeGreaterThan(0);
  expect(rows.map(({ rank }) => rank).toSorted()).toEqual(passing.map(({ rank }) => rank).toSorted());
  const costs = rows.map(({ quantities }) => quantities.cost);
  expect(costs).toEqual(costs.toSorted((a: number, b: number) => b - a));
  expect(head.export.selection).toEqual({
    ranges: [{ quantity: 'density', max: 9 }],
    has: ['Mo'],
    without: [],
    order: 'cost',
    direction: 'desc',
  });
});

test('what an export says of itself starts the same search again, with the same rows', async () => {
  const { body } = await get('format=csv');
  const told = (key: string) =>
    body
      .split('\n')
      .find((line) => line.startsWith(`# ${key}: `))!
      .slice(key.length + 4);
  const again = await server.search(JSON.parse(told('specification')));
  const second = await server.ask({ url: `/api/v1/searches/${again.id}/export?format=csv` });
  const rows = (text: string) => text.split('\n').filter((line) => !line.startsWith('#'));
  expect(rows(second.body)).toEqual(rows(body));
  expect(again).toMatchObject({ dataVersion: told('dataVersion'), engineVersion: told('engineVersion') });
});

test.each(['', 'format=xls', 'format=csv&limit=5', 'format=csv&has=Xx'])(
  'an export asked for with "%s" is refused before anything is sent',
  async (query) => {
    const answer = await get(query);
    expect(answer.statusCode).toBe(400);
    expect(answer.headers['content-disposition']).toBeUndefined();
  },
);

test('a spreadsheet of more rows than a sheet can hold is refused with what to do', async () => {
  // A search that keeps so many takes minutes; here it only says so.
  const large = await testServer(
    {},
    {
      around: (searches) => ({
        ...searches,
        values: async (...asked) => ({ ...(await searches.values(...asked)), meeting: 2 ** 20 }),
      }),
    },
  );
  const { id: own } = await large.search(specification);
  const answer = await large.ask({ url: `/api/v1/searches/${own}/export?format=xlsx` });
  await large.close();
  expect(answer.statusCode).toBe(400);
  expect(answer.json().faults[0]).toMatchObject({
    code: 'export/too-many-rows',
    pointer: '/format',
    detail: 'A spreadsheet holds at most 1048575 rows, and these are 1048576.',
  });
});
