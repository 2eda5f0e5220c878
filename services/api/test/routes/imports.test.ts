import { pairEnthalpy, pairRecords } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

const noImport = { source: null, import: null, importName: null, importedAt: null };

let server: TestServer;
beforeAll(async () => {
  server = await testServer();
});
afterAll(() => server.close());

const ask = (method: 'GET' | 'POST' | 'DELETE', path: string) =>
  server.ask({ method, url: `/api/v1${path}` });
const get = async (path: string) => (await ask('GET', path)).json();
const send = (path: string, payload: string, headers: Record<string, string> = {}) =>
  server.ask({
    method: 'POST',
    url: `/api/v1${path}`,
    payload,
    headers: { 'content-type': 'text/csv', ...headers },
  });

// Invented values.
const pairs = 'a,b,mixingEnthalpy,source\nAl,Ni,-30,invented\nCo,Fe,-1,\n';

test('a preview tells the fate of every row and stores nothing', async () => {
  const answer = await send('/imports/preview?kind=pairs', `${pairs}Al,Xx,1,\n`);
  expect(answer.statusCode).toBe(200);
  expect(answer.json()).toMatchObject({
    kind: 'pairs',
    counts: { new: 0, changed: 2, same: 0, refused: 1 },
    storable: false,
    faults: [],
    rows: [
      { line: 2, text: 'Al,Ni,-30,invented', fate: 'changed', faults: [] },
      { line: 3, fate: 'changed' },
      { line: 4, fate: 'refused', before: null, faults: [{ code: 'element/unknown', pointer: '/rows/2/b' }] },
    ],
  });
  expect(answer.json().rows[0].before).toContain(`${pairEnthalpy('Al', 'Ni')} kJ/mol`);
  expect(await get('/imports')).toEqual({ items: [] });
  expect((await send('/imports/preview?kind=prices', 'nothing')).json()).toMatchObject({
    rows: [],
    storable: false,
    faults: [{ code: 'prices/empty' }],
  });
  expect((await send('/imports/preview?kind=other', pairs)).json()).toMatchObject({
    status: 400,
    faults: [{ code: 'request/wrong-value', pointer: '/kind' }],
  });
});

test('rows copied from a spreadsheet stand in the preview as they were, one wrong row leaving the others', async () => {
  const answer = await send(
    '/imports/preview?kind=pairs',
    'a\tb\tmixingEnthalpy\tsource\nAl\tNi\t-30,5\tinvented\nCo\tFe\t1,250\t\n',
  );
  expect(answer.json().rows).toMatchObject([
    { line: 2, text: 'Al\tNi\t-30,5\tinvented', fate: 'changed', faults: [] },
    { line: 3, fate: 'refused', faults: [{ pointer: '/rows/1/mixingEnthalpy' }] },
  ]);
});

test('a file with a row that is refused is refused whole, with every fault', async () => {
  const answer = await send('/imports?kind=pairs', `${pairs}Al,Xx,1,\nFe,Fe,1,\n`);
  expect(answer.statusCode).toBe(422);
  expect(answer.json()).toMatchObject({
    code: 'import/refused',
    faults: [{ code: 'import/refused' }, { pointer: '/rows/2/b' }, { pointer: '/rows/3/b' }],
  });
  expect(await get('/imports')).toEqual({ items: [] });
});

test('what is stored holds, is withdrawn and comes back', async () => {
  const answer = await send('/imports?kind=pairs&name=Our%20pairs', pairs, { 'idempotency-key': 'once' });
  expect(answer.statusCode).toBe(201);
  const version = answer.json();
  expect(version).toMatchObject({
    ...{ kind: 'pairs', name: 'Our pairs', rows: 2, inForce: true, withdrawnAt: null, searches: 0 },
  });
  expect(answer.headers.location).toBe(`/api/v1/imports/${version.number}`);
  const again = await send('/imports?kind=pairs&name=Our%20pairs', pairs, { 'idempotency-key': 'once' });
  expect(again.json()).toEqual(version);
  expect(await get('/imports?kind=pairs')).toEqual({ items: [version] });
  expect(await get('/imports?kind=alloys')).toEqual({ items: [] });
  expect(await get(`/imports/${version.number}`)).toEqual({ ...version, csv: pairs });
  const file = await ask('GET', `/imports/${version.number}?format=csv`);
  expect(file.body).toBe(pairs);
  expect(file.headers['content-type']).toContain('text/csv');

  const nickelAluminium = async () =>
    (await get('/pairs')).find(({ a, b }: { a: string; b: string }) => a === 'Al' && b === 'Ni');
  expect(await nickelAluminium()).toMatchObject({
    ...{ mixingEnthalpy: -30, import: version.number, importName: 'Our pairs', importedAt: version.at },
  });
  // What is told of an alloy, and cautions of a charge, name the source of the value that they read.
  const origin = `own value of ${version.at.slice(0, 10)}, import ${version.number} (Our pairs): invented`;
  const asked = { composition: 'AlNi' };
  const post = async (path: string, payload: object) =>
    (await server.ask({ method: 'POST', url: `/api/v1${path}`, payload })).json();
  const sourcesNow = async () => {
    const { paragraphs } = await post('/explain', asked);
    return paragraphs.find(({ subject }: { subject: string }) => subject === 'demixing').sources;
  };
  // Takeuchi & Inoue 2005: Al–Ni −22 kJ/mol.
  expect(await sourcesNow()).toContain(`Al–Ni −30 kJ/mol: ${origin}; published: −22`);
  const { cautions } = await post('/charge', { ...asked, mass: 50, resolution: 0.001 });
  expect(cautions.find(({ kind }: { kind: string }) => kind === 'heat of mixing').text).toContain(
    `Al–Ni −30 (${origin})`,
  );
  const withdrawn = await ask('DELETE', `/imports/${version.number}`);
  expect([withdrawn.statusCode, withdrawn.body]).toEqual([204, '']);
  expect((await sourcesNow()).join()).not.toContain('own value');
  expect(await get('/pairs')).toEqual(pairRecords().map((pair) => ({ ...pair, ...noImport })));
  expect((await ask('POST', `/imports/${version.number}/restore`)).json()).toEqual(version);
  expect(await nickelAluminium()).toMatchObject({ mixingEnthalpy: -30 });
  await ask('DELETE', `/imports/${version.number}`);
  for (const [method, path] of [
    ['GET', '/imports/99'],
    ['DELETE', '/imports/99'],
    ['POST', '/imports/99/restore'],
  ] as const) {
    expect((await ask(method, path)).json()).toMatchObject({ status: 404, code: 'import/unknown' });
  }
});

test('pair values in force go into screening, and into searches with their data version', async () => {
  const screened = async () => {
    const payload = { compositions: ['AlNi'] };
    const [one] = (await server.ask({ method: 'POST', url: '/api/v1/screen', payload })).json();
    return one.quantities.mixingEnthalpy;
  };
  const explained = async () => {
    const payload = { composition: 'AlNi' };
    return (await server.ask({ method: 'POST', url: '/api/v1/explain', payload })).json();
  };
  const asked = {
    elements: { pool: ['Al', 'Ni', 'Fe'] },
    components: 2,
    fractions: { step: 10 },
    rank: [{ quantity: 'mixingEnthalpy', prefer: 'low' }],
    keep: 1,
  };
  const before = await server.search(asked);
  // An equimolar binary alloy has the enthalpy of its pair: 4 H c(1 − c) with c = 1/2.
  expect(await screened()).toBeCloseTo(pairEnthalpy('Al', 'Ni')!, 12);
  const { dataVersion } = await explained();
  const { number } = (await send('/imports?kind=pairs', pairs)).json();
  expect(await screened()).toBeCloseTo(-30, 12);
  const told = await explained();
  expect(told.quantities.mixingEnthalpy).toBeCloseTo(-30, 12);
  expect(told.dataVersion).not.toBe(dataVersion);
  const after = await server.search(asked);
  expect(after.dataVersion).toBe(told.dataVersion);
  expect(after.bestSoFar!.score).toBeCloseTo(-30, 12);
  expect(await get(`/imports/${number}`)).toMatchObject({ searches: 1 });

  // A charge sheet is of the same data, and its cautions know the pair.
  const charged = await server.ask({
    ...{ method: 'POST', url: '/api/v1/charge-sheets' },
    payload: { composition: 'AlNi', mass: 50, resolution: 0.001 },
  });
  expect(charged.json().dataVersion).toBe(told.dataVersion);
  const mixing = charged.json().cautions.find(({ kind }: { kind: string }) => kind === 'heat of mixing');
  expect(mixing.text).toContain('Al–Ni −30');

  const versions = await get('/data-versions');
  expect(versions.current).toBe(after.dataVersion);
  expect(versions.items).toMatchObject([
    {
      dataVersion: after.dataVersion,
      current: true,
      searches: [{ id: after.id }],
      with: [{ number, kind: 'pairs' }],
    },
    { dataVersion: before.dataVersion, current: false, searches: [{ id: before.id }], with: [] },
  ]);
  await ask('DELETE', `/imports/${number}`);
  expect((await get('/data-versions')).current).toBe(before.dataVersion);
  // The search keeps what it was planned with.
  expect((await get(`/searches/${after.id}`)).dataVersion).toBe(after.dataVersion);
});

test('lists that were put in force and columns are imports too', async () => {
  const put = (path: string, payload: string) =>
    server.ask({ method: 'PUT', url: `/api/v1${path}`, payload, headers: { 'content-type': 'text/csv' } });
  await put('/prices', 'symbol,pricePerKilogram,currency,date,source\nNi,20,CHF,2026-10-05,invented\n');
  await put('/columns', 'symbol,value,name,unit,mixing\nNi,90.9,Supply,,mole\n');
  const [column, list] = (await get('/imports')).items;
  expect([column, list]).toMatchObject([
    { kind: 'column', name: 'Supply', rows: 1, inForce: true },
    { kind: 'prices', rows: 1, counts: { changed: 1 }, inForce: true },
  ]);
  await ask('DELETE', `/imports/${list.number}`);
  await ask('DELETE', `/imports/${column.number}`);
  expect((await get('/prices')).invented).toBe(true);
  expect(await get('/columns')).toEqual([]);
});

test('published alloys are searched, and those that were brought in stand among them', async () => {
  const all = await get('/published-alloys?limit=1000');
  expect(all.total).toBe(publishedAlloys().length);
  const csv = 'composition,name,phases,process,doi,note\nCoCrFeNi,trial 7,FCC,cast,,invented\n';
  const { number } = (await send('/imports?kind=alloys', csv)).json();
  const { total, items } = await get('/published-alloys?limit=1');
  expect(total).toBe(all.total + 1);
  expect(items).toEqual([
    {
      ...{ composition: { Co: 25, Cr: 25, Fe: 25, Ni: 25 }, name: 'trial 7', phases: 'FCC', process: 'cast' },
      ...{ source: 'invented', doi: [], own: true, import: number },
    },
  ]);
  const totalOf = async (query: string) => (await get(`/published-alloys?${query}`)).total;
  expect(await totalOf('own=yes')).toBe(1);
  expect(await totalOf('own=no')).toBe(all.total);
  expect(await totalOf('text=TRIAL')).toBe(1);
  const byHand = publishedAlloys().filter(
    ({ composition, phases }) =>
      'Al' in composition && !('Co' in composition) && (phases ?? '').split('+').includes('B2'),
  );
  expect(byHand.length).toBeGreaterThan(0);
  expect(await totalOf('has=Al&without=Co&phase=B2')).toBe(byHand.length);
  expect((await get('/published-alloys?limit=1000&at=1')).items).toEqual(all.items);
  const names = async (query: string) =>
    (await get(`/published-alloys?limit=1000&${query}`)).items.map(({ name }: { name: string }) => name);
  const rising = await names('order=name');
  const numeric = new Intl.Collator('en', { numeric: true });
  expect(rising).toEqual([...rising].sort(numeric.compare));
  expect(await names('order=name&at=200')).toEqual(rising.slice(200));
  // Those without a phase stand last either way.
  for (const direction of ['asc', 'desc']) {
    const { items: sorted } = await get(`/published-alloys?limit=1000&order=phases&direction=${direction}`);
    const phases: (string | null)[] = sorted.map((one: { phases: string | null }) => one.phases);
    const told = phases.filter((one) => one !== null);
    expect(phases.slice(0, told.length)).toEqual(told);
    expect(told[0]! < told.at(-1)!).toBe(direction === 'asc');
  }
  expect((await ask('GET', '/published-alloys?order=colour')).statusCode).toBe(400);
  expect((await ask('GET', '/published-alloys?has=Xx')).json()).toMatchObject({
    status: 400,
    code: 'element/unknown',
  });
  const near = await server.ask({
    method: 'POST',
    url: '/api/v1/explain',
    payload: { composition: 'CoCrFeNi' },
  });
  const [own, ...others] = near.json().nearest;
  expect(own).toMatchObject({ formula: 'trial 7', own: true, import: number, distance: 0 });
  expect(others.every((one: { own: boolean }) => !one.own)).toBe(true);
  expect((await get('/evidence')).broughtIn).toMatchObject({ melts: 1, systems: 1 });
  await ask('DELETE', `/imports/${number}`);
  expect((await get('/evidence')).broughtIn).toBeNull();
});

test('own alloys explore systems and stand in the layer of a search, told apart from published ones', async () => {
  // A system of which nothing is published here; invented.
  const pool = ['Au', 'Be', 'Cd'];
  expect(publishedAlloys().some(({ composition }) => Object.keys(composition).join() === pool.join())).toBe(
    false,
  );
  const { id } = await server.search({
    elements: { pool },
    components: 3,
    fractions: { step: 20 },
    rank: [{ quantity: 'density', prefer: 'low' }],
  });
  const systems = async () => (await get(`/searches/${id}/systems`)).items[0];
  const layer = async () => (await get(`/searches/${id}/published?quantities=density`)).items;
  expect(await systems()).toMatchObject({ published: null, own: 0 });
  const before = await layer();
  expect(before.every((one: { own: boolean }) => !one.own)).toBe(true);
  const csv = 'composition,name,phases,process,doi,note\nAuBeCd,trial 8,,cast,,invented\n';
  const { number } = (await send('/imports?kind=alloys', csv)).json();
  expect(await systems()).toMatchObject({ published: null, own: 1 });
  expect((await get(`/searches/${id}/systems?explored=no`)).items).toEqual([]);
  expect((await layer()).slice(before.length)).toMatchObject([
    { formula: 'trial 8', own: true, inPool: true, references: 0, values: [expect.any(Number)] },
  ]);
  await ask('DELETE', `/imports/${number}`);
});

test('raw materials are those that were brought in and the pure elements', async () => {
  const csv =
    'material,contains,amounts,purity,price,currency,melting\nFeNb66,Fe34Nb66,wt.%,98.5,40,EUR,1853\n';
  const { number } = (await send('/imports?kind=materials', csv)).json();
  const { items } = await get('/materials');
  expect(items[0]).toMatchObject({
    ...{ name: 'FeNb66', purity: 98.5, price: 40, currency: 'EUR', meltingTemperature: 1853 },
    ...{ own: true, import: number },
  });
  expect(items[0].contains.Nb).toBeCloseTo(66, 9);
  expect(items.find(({ name }: { name: string }) => name === 'Ni')).toMatchObject({
    own: false,
    purity: 100,
  });

  const charge = async (composition: string) => {
    const payload = { composition, mass: 100, resolution: 0.001, materials: 'in force' };
    const { lines, currency } = (await server.ask({ method: 'POST', url: '/api/v1/charge', payload })).json();
    return { currency, named: lines.map(({ material }: { material: string }) => material) };
  };
  // Niobium comes with the master alloy or pure, whichever is cheaper; nickel is there only pure.
  const first = await charge('Fe60Nb20Ni20');
  expect(first.currency).toBe('EUR');
  expect(first.named).toContain('Ni');
  expect(first.named.some((name: string) => name === 'FeNb66' || name === 'Nb')).toBe(true);
  // A material of one element takes the place of the pure one.
  await send('/imports?kind=materials', 'material,purity,price,currency\nNi pieces,99.5,1,EUR\n');
  const { named } = await charge('Fe60Nb20Ni20');
  expect(named).toContain('Ni pieces');
  expect(named).not.toContain('Ni');
});
