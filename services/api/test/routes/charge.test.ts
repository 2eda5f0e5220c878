import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer();
});
afterAll(() => server.close());

const post = (url: string, payload: unknown, headers = {}) =>
  server.ask({ method: 'POST', url: `/api/v1/${url}`, payload: payload as object, headers });
const batch = { composition: 'CoCrFeMnNi', mass: 50, resolution: 0.001 };
const codesOf = (answer: { json: () => { faults: { code: string; pointer: string }[] } }) =>
  answer.json().faults.map(({ code, pointer }) => `${code} ${pointer}`);

// Worked by hand in packages/charge/test/chargeSheet.test.ts.
test('a charge with a purity and a loss comes out as worked by hand', async () => {
  const answer = await post('charge', { ...batch, purity: { Mn: 99.7 }, loss: { Mn: 1.5 } });
  expect(answer.statusCode).toBe(200);
  const { lines, total, cost, currency, order } = answer.json();
  expect(lines.map(({ mass }: { mass: number }) => mass)).toEqual([10.471, 9.238, 9.922, 9.94, 10.428]);
  expect(total).toBe(49.999);
  expect(cost).toBeGreaterThan(0);
  expect(currency).toBe('EUR');
  expect(order[0]).toBe('Mn 99.7 %');
});

test('at.% by symbol and materials of your own are understood', async () => {
  const materials = [
    { name: 'Fe', price: 1 },
    { name: 'FeNb66', contains: 'Fe34Nb66', amounts: 'wt.%', purity: 98, price: 40 },
  ];
  const answer = await post('charge', {
    ...{ composition: { Fe: 50, Nb: 50 }, mass: 100, resolution: 0.01, materials, currency: 'NOK' },
  });
  expect(answer.json()).toMatchObject({
    currency: 'NOK',
    lines: [
      { material: 'Fe', element: 'Fe', mass: 5.27 },
      { material: 'FeNb66', element: null, mass: 94.73 },
    ],
  });
});

describe('what is wrong is told with its place', () => {
  test.each([
    [{ mass: -5 }, 'request/wrong-value /mass'],
    [{ mass: 'much' }, 'request/wrong-value /mass'],
    [{ mas: 5 }, 'request/unknown-key /mas'],
    [{ composition: 'CoXx' }, 'element/unknown /composition'],
    [{ resolution: 100 }, 'request/wrong-value /resolution'],
    [{ purity: { Zn: 99 } }, 'charge/not-in-alloy /purity/Zn'],
    [{ purity: { constructor: 99 } }, 'charge/not-in-alloy /purity/constructor'],
    [{ loss: { toString: 5 } }, 'charge/not-in-alloy /loss/toString'],
    [{ purity: { Mn: 0 } }, 'request/wrong-value /purity/Mn'],
    [{ purity: { Mn: 99 }, materials: [{ name: 'Mn' }] }, 'charge/two-purities /purity'],
    [{ materials: [{ name: 'Copper' }] }, 'materials/name /materials/0/name'],
    [{ materials: [{ name: 'Co' }, { name: 'Co' }] }, 'materials/repeated /materials/1/name'],
    [{ materials: [{ name: 'Co' }] }, 'charge/cannot-be-met /materials'],
    [{ composition: 'Co99.999Ni0.001', mass: 5, resolution: 0.01 }, 'charge/too-light /mass'],
  ])('%j', async (more, expected) => {
    const answer = await post('charge', { ...batch, ...more });
    expect(answer.statusCode).toBe(400);
    expect(codesOf(answer)).toContain(expected);
  });
});

describe('charge sheets that are kept', () => {
  test('have a number, what they were worked out from, and are found again', async () => {
    const saved = await post('charge-sheets', { ...batch, name: ' First melt ', loss: { Mn: 1.5 } });
    expect(saved.statusCode).toBe(201);
    const sheet = saved.json();
    expect(sheet.number).toMatch(/^C-\d{4}$/);
    expect(saved.headers.location).toBe(`/api/v1/charge-sheets/${sheet.number}`);
    expect(sheet).toMatchObject({
      name: 'First melt',
      request: { ...batch, loss: { Mn: 1.5 } },
      prices: { currency: 'EUR', invented: true },
      dataVersion: expect.stringMatching(/^[0-9a-f]{12}$/),
    });
    const found = await server.ask({ url: `/api/v1/charge-sheets/${sheet.number.toLowerCase()}` });
    expect(found.json()).toEqual(sheet);
    const [newest] = (await server.ask({ url: '/api/v1/charge-sheets' })).json();
    expect(newest).toMatchObject({
      number: sheet.number,
      name: 'First melt',
      mass: 50,
      composition: { Co: 20 },
    });
  });

  test('the same key keeps one', async () => {
    const headers = { 'idempotency-key': 'a key of its own' };
    const first = (await post('charge-sheets', batch, headers)).json();
    expect((await post('charge-sheets', batch, headers)).json()).toEqual(first);
    expect((await post('charge-sheets', batch)).json().number).not.toBe(first.number);
  });

  test('what cannot be charged is not kept', async () => {
    const count = async () => (await server.ask({ url: '/api/v1/charge-sheets' })).json().length;
    const before = await count();
    expect((await post('charge-sheets', { ...batch, mass: 0 })).statusCode).toBe(400);
    expect(await count()).toBe(before);
  });

  test.each(['C-9999', 'seven', 'C-', '-1'])('%s is no number of a sheet', async (number) => {
    const answer = await server.ask({ url: `/api/v1/charge-sheets/${number}` });
    expect(answer.statusCode).toBe(404);
    expect(codesOf(answer)).toEqual(['charge/not-found ']);
  });
});
