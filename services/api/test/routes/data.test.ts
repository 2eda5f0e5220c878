import { demoPrices, elementRecords, pairRecords } from '@tiegel/elements';
import { lateQuantities } from '@tiegel/insight';
import { type Quantity, quantities } from '@tiegel/screening';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

const noImport = { source: null, import: null, importName: null, importedAt: null };

let server: TestServer;
beforeAll(async () => {
  server = await testServer();
});
afterAll(() => server.close());

const get = async (path: string) => (await server.ask({ url: `/api/v1${path}` })).json();
const put = (payload: string) =>
  server.ask({
    method: 'PUT',
    url: '/api/v1/prices',
    payload,
    headers: { 'content-type': 'text/csv; charset=utf-8' },
  });
const ownList =
  'symbol,pricePerKilogram,currency,date,source\nCo,40,CHF,2026-10-01,our own contract\nNi,20,CHF,2026-10-05,our own contract\n';

test('elements are told whole: every column, hazards and the code of each source', async () => {
  const elements = await get('/elements');
  expect(elements).toEqual(JSON.parse(JSON.stringify(elementRecords(demoPrices))));
  const nickel = elements.find(({ symbol }: { symbol: string }) => symbol === 'Ni');
  // Printed in the CRC Handbook (from memory): density 8.90 g/cm3, melting point 1455 °C.
  expect(nickel).toMatchObject({ atomicNumber: 28, atomicMass: 58.6934 });
  expect(Math.abs(nickel.density - 8.9)).toBeLessThanOrEqual(0.02);
  expect(Math.abs(nickel.meltingTemperature - 1728)).toBeLessThanOrEqual(1);
});

test('what is not known is null, never 0', async () => {
  const carbon = (await get('/elements')).find(({ symbol }: { symbol: string }) => symbol === 'C');
  expect(carbon.meltingTemperature).toBeNull();
});

test('pairs are told whole', async () => {
  expect(await get('/pairs')).toEqual(pairRecords().map((pair) => ({ ...pair, ...noImport })));
});

test('a column of one’s own is put in force, searched with, and taken out', async () => {
  const csv = 'symbol,value,name,unit,mixing\nCo,100,Heat conduction,W/(m K),mole\nNi,90.9,,,\nFe,80.4,,,\n';
  const headers = { 'content-type': 'text/csv' };
  const put = await server.ask({ method: 'PUT', url: '/api/v1/columns', payload: csv, headers });
  expect(put.json()).toMatchObject({ id: 'heatConduction', values: { Ni: 90.9 } });
  expect(await get('/columns')).toEqual([put.json()]);
  const { question } = (
    await server.ask({
      method: 'POST',
      url: '/api/v1/count',
      payload: {
        elements: { pool: ['Co', 'Fe', 'Ni'] },
        components: 3,
        fractions: { step: 10 },
        rank: [{ quantity: 'heatConduction', prefer: 'high' }],
      },
    })
  ).json();
  expect(question).toContain('highest heat conduction');
  const remove = () => server.ask({ method: 'DELETE', url: '/api/v1/columns/heatConduction' });
  expect((await remove()).json()).toEqual([]);
  expect((await remove()).json()).toMatchObject({ status: 404, code: 'column/unknown' });
  const wrong = await server.ask({ method: 'PUT', url: '/api/v1/columns', payload: 'symbol\nX', headers });
  expect(wrong.statusCode).toBe(400);
});

test('late quantities are told apart from those that may limit a search', async () => {
  const late = await get('/late-quantities');
  const ids = late.map(({ id }: { id: string }) => id);
  expect(ids).toEqual(lateQuantities.map(({ id }) => id));
  expect(late[0]).toMatchObject({ id: 'demixingTemperature', unit: 'K', symbol: 'T_sp' });
  expect(ids.filter((id: string) => quantities.some((quantity) => quantity.id === id))).toEqual([]);
});

test('quantities are told in the order of every table, without the tree of the formula', async () => {
  const told = await get('/quantities');
  expect(told.map(({ id }: { id: string }) => id)).toEqual(quantities.map(({ id }) => id));
  for (const one of told) {
    expect(
      Object.keys(one)
        .filter((key) => key !== 'basis')
        .toSorted(),
    ).toEqual([
      'caution',
      'decimals',
      'id',
      'meaning',
      'name',
      'needs',
      'notation',
      'range',
      'source',
      'symbol',
      'unit',
    ]);
  }
  // One alone means nothing of some alloys.
  expect(told.flatMap(({ id, basis }: Quantity) => (basis ? [{ id, basis }] : []))).toEqual([
    { id: 'singlePhaseEstimate', basis: { quantity: 'nearestDistance', max: 0.22 } },
  ]);
  expect(told.find(({ id }: { id: string }) => id === 'omega').needs).toEqual({
    conditions: [],
    elements: ['meltingTemperature'],
    pairs: ['mixingEnthalpy'],
  });
});

test('the list in force at first is invented and says so', async () => {
  expect(await get('/prices')).toEqual(demoPrices);
});

test('a list of your own takes its place for elements and screening, and gives it back', async () => {
  const answer = await put(ownList);
  expect(answer.statusCode).toBe(200);
  const own = await get('/prices');
  expect(own).toEqual(answer.json());
  expect(own).toMatchObject({ currency: 'CHF', date: '2026-10-05', invented: false });
  const elements = await get('/elements');
  const price = (symbol: string) => elements.find((one: { symbol: string }) => one.symbol === symbol).price;
  expect([price('Co'), price('Ni'), price('Fe')]).toEqual([40, 20, null]);

  const screened = await server.ask({
    method: 'POST',
    url: '/api/v1/screen',
    payload: { compositions: [{ Ni: 1 }, 'Co50Fe50'] },
  });
  expect(screened.json().map(({ quantities }: { quantities: { cost: unknown } }) => quantities.cost)).toEqual(
    [20, null],
  );

  await server.ask({ method: 'DELETE', url: '/api/v1/prices' });
  expect(await get('/prices')).toEqual(demoPrices);
});

test('the demonstration is a search that runs', async () => {
  const { story, cautions, specification } = await get('/demonstration');
  expect(story).toMatch(/invented/i);
  expect(cautions.join(' ')).toMatch(/corrosion/i);
  const size = await server.ask({ method: 'POST', url: '/api/v1/count', payload: specification });
  expect(size.json().points).toBeGreaterThan(1000);
});
