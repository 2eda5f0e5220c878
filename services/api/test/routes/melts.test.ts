import { readdirSync, readFileSync, rmSync, truncateSync } from 'node:fs';
import { join } from 'node:path';
import { openStore } from '@tiegel/store';
import { elements as outside } from 'chemical-elements';
import { afterAll, beforeAll, beforeEach, describe, expect, onTestFinished, test } from 'vitest';
import { temporaryFolder } from '../../../../test/fixtures/temporaryFolder.ts';
import { attachmentFiles } from '../../src/melts/attachmentFiles.ts';
import { attachmentType } from '../../src/melts/attachmentType.ts';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

let server: TestServer;
let charge: string;
beforeAll(async () => {
  server = await testServer();
  const body = {
    composition: 'CoCrFeMnNi',
    mass: 50,
    resolution: 0.001,
    purity: { Mn: 99.7 },
    loss: { Mn: 1.5 },
  };
  charge = (await send('POST', 'charge-sheets', body)).json().number;
});
afterAll(() => server.close());

const send = (method: 'GET' | 'POST' | 'PUT' | 'DELETE', url: string, payload?: unknown, headers = {}) =>
  server.ask({
    method,
    url: `/api/v1/${url}`,
    headers,
    ...(payload === undefined ? {} : { payload: payload as object }),
  });
const codesOf = (answer: { json: () => { faults: { code: string; pointer: string }[] } }) =>
  answer.json().faults.map(({ code, pointer }) => `${code} ${pointer}`);

/** Weighed as the sheet says, but for 0.1 g too much of chromium. */
const weighed = [
  { material: 'Co', mass: 10.471 },
  { material: 'Cr', mass: 9.338 },
  { material: 'Fe', mass: 9.922 },
  { material: 'Mn 99.7 %', mass: 9.94 },
  { material: 'Ni', mass: 10.428 },
];
const entry = (more = {}) => ({
  ...{ name: 'First trial', date: '2026-11-25', charge, weighed, ingot: 49.9, process: 'arc melting' },
  anneal: { temperature: 1473, hours: 24, cooling: 'water quench' },
  ...{ phases: ['FCC'], methods: ['X-ray diffraction'], hardness: 152, density: 7.94, notes: '' },
  ...more,
});
const recorded = async (more = {}) => {
  const answer = await send('POST', 'melts', entry(more));
  if (answer.statusCode !== 201) throw new Error(answer.body);
  return answer.json();
};

describe('a melt that is recorded', () => {
  test('tells what is probably a slip, with its place, and is recorded all the same', async () => {
    expect((await recorded()).doubts).toEqual([]);
    const slip = weighed.map((one) => (one.material === 'Cr' ? { ...one, mass: 933.8 } : one));
    const { id, doubts } = await recorded({ weighed: slip, ingot: 70, density: 1.5 });
    expect(doubts.map(({ pointer }: { pointer: string }) => pointer)).toEqual([
      ...['/weighed/1/mass', '/ingot', '/density'],
    ]);
    expect((await send('GET', `melts/${id}`)).json().doubts).toEqual(doubts);
  });

  // Atomic masses of chemical-elements 2.3.3; purity and loss as the sheet has them.
  test('has the composition that was weighed, not the nominal one', async () => {
    const melt = await recorded();
    const moles = weighed.map(({ material, mass }) => {
      const symbol = material.slice(0, 2);
      const metal = symbol === 'Mn' ? mass * 0.997 * 0.985 : mass;
      return [symbol, metal / outside.find((one) => one.symbol === symbol)!.mass!] as const;
    });
    const sum = moles.reduce((whole, [, one]) => whole + one, 0);
    for (const [symbol, one] of moles) {
      expect(Math.abs(melt.composition[symbol] - (100 * one) / sum)).toBeLessThanOrEqual(0.005);
    }
    expect(melt.composition.Cr).toBeGreaterThan(20.1);
    expect(melt.nominal).toEqual({ Co: 20, Cr: 20, Fe: 20, Mn: 20, Ni: 20 });
    expect(melt).toMatchObject({
      ...{ version: 1, system: 'Co-Cr-Fe-Mn-Ni', label: 'FCC', phaseClass: 'fcc', singlePhase: true },
      ...{ deletedAt: null, attachments: [] },
    });
  });

  test('needs no charge sheet where its materials say what they are', async () => {
    const melt = await recorded({
      charge: null,
      weighed: [
        { material: 'Fe', mass: 10 },
        { material: 'FeNb66', contains: 'Fe34Nb66', amounts: 'wt.%', mass: 10 },
      ],
    });
    // By hand: 13.4 g of iron (55.845 u) and 6.6 g of niobium (92.906 u): 0.23995 and 0.07104 mol.
    expect(melt.composition.Nb).toBeCloseTo(22.84, 2);
    expect(melt.nominal).toBeNull();
  });

  test('names its phases as the published labels do', async () => {
    const melt = await recorded({ phases: ['B2', 'FCC', 'sigma'] });
    expect(melt).toMatchObject({ label: 'FCC+B2+sigma', phaseClass: 'other', singlePhase: false });
    expect(await recorded({ phases: null, methods: [] })).toMatchObject({
      label: null,
      phaseClass: null,
      singlePhase: null,
    });
  });

  test('is one melt where its answer was lost', async () => {
    const headers = { 'idempotency-key': 'one melt' };
    const first = await send('POST', 'melts', entry(), headers);
    expect((await send('POST', 'melts', entry(), headers)).json()).toEqual(first.json());
  });
});

describe('what is wrong is told with its place', () => {
  test.each([
    [{ charge: 'C-9999' }, 404, 'charge/not-found /charge'],
    [{ charge: null }, 400, 'materials/name /weighed/3/name'],
    [{ date: '2026-02-30' }, 400, 'request/wrong-value /date'],
    [{ process: 'magic' }, 400, 'request/wrong-value /process'],
    [{ phases: ['FCC', 'FCC'] }, 400, 'melt/phase-twice /phases/1'],
    [{ methods: [] }, 400, 'melt/method-missing /methods'],
    [{ weighed: [...weighed, weighed[0]] }, 400, 'melt/weighed-twice /weighed/5/material'],
    [{ loss: { Zn: 1 } }, 400, 'charge/not-in-alloy /loss/Zn'],
    [{ loss: { Mn: 100 } }, 400, 'request/wrong-value /loss/Mn'],
    [{ hardnes: 100 }, 400, 'request/unknown-key /hardnes'],
    [{ hardness: -1 }, 400, 'request/out-of-range /hardness'],
  ])('%j', async (more, status, expected) => {
    const { charge: none, weighed: some, ...rest } = more as Record<string, unknown>;
    const materials =
      none === null
        ? { weighed: weighed.map((one, at) => (at === 3 ? { ...one, material: 'Manganese' } : one)) }
        : {};
    const answer = await send(
      'POST',
      'melts',
      entry({
        ...rest,
        ...materials,
        ...(none === undefined ? {} : { charge: none }),
        ...(some === undefined ? {} : { weighed: some }),
      }),
    );
    expect(answer.statusCode).toBe(status);
    expect(codesOf(answer)).toContain(expected);
  });
});

test('melts with observed phases enter the evidence beside the published alloys', async () => {
  const another = await testServer();
  const ask = (method: 'GET' | 'POST', url: string, payload?: object) =>
    another.ask({ method, url: `/api/v1/${url}`, ...(payload === undefined ? {} : { payload }) });
  const own = async () => (await ask('GET', 'evidence')).json().own;
  const melted = (symbols: string[], phases: string[] | null) =>
    ask('POST', 'melts', {
      ...entry({ charge: null, phases, weighed: symbols.map((material) => ({ material, mass: 10 })) }),
    });
  expect(await own()).toBeNull();
  await melted(['Fe', 'Ni'], null);
  expect(await own()).toBeNull();
  // 10 g of each: nickel 10, iron 8, so VEC is between 8 and 10; niobium 5 and tantalum 5 have 5.
  await melted(['Fe', 'Ni'], ['FCC']);
  await melted(['Nb', 'Ta'], ['BCC']);
  const { melts, criteria, phaseEstimate, trust } = await own();
  expect(melts).toBe(2);
  expect(criteria.find(({ id }: { id: string }) => id === 'guo2011Fcc')).toMatchObject({
    n: 2,
    tp: 1,
    tn: 1,
    interval: null,
  });
  expect(phaseEstimate.n + phaseEstimate.withoutBasis).toBe(2);
  expect(trust).toMatch(/nothing can be concluded/);
  await another.close();
});

describe('changing and deleting lose nothing', () => {
  test('a change keeps what stood before; a change of an old version is refused', async () => {
    const { id } = await recorded();
    const changed = await send('PUT', `melts/${id}`, { ...entry({ hardness: 160 }), version: 1 });
    expect(changed.json()).toMatchObject({ version: 2, hardness: 160 });
    const stale = await send('PUT', `melts/${id}`, { ...entry({ hardness: 170 }), version: 1 });
    expect(stale.statusCode).toBe(409);
    expect(codesOf(stale)).toEqual(['melt/changed-meanwhile /version']);
    const { history, hardness } = (await send('GET', `melts/${id}`)).json();
    expect(hardness).toBe(160);
    expect(
      history.map(
        ({ version, entry: { hardness: of } }: { version: number; entry: { hardness: number } }) => [
          version,
          of,
        ],
      ),
    ).toEqual([
      [2, 160],
      [1, 152],
    ]);
  });

  test('a deleted melt leaves the list and comes back', async () => {
    const { id } = await recorded();
    const listed = async () =>
      (await send('GET', 'melts')).json().items.some((one: { id: string }) => one.id === id);
    expect(await listed()).toBe(true);
    expect((await send('DELETE', `melts/${id}`)).json().deletedAt).toMatch(/Z$/);
    expect(await listed()).toBe(false);
    expect((await send('POST', `melts/${id}/restore`)).json().deletedAt).toBeNull();
    expect(await listed()).toBe(true);
  });

  test.each(['GET', 'DELETE'] as const)('%s of a melt that is not there', async (method) => {
    expect(codesOf(await send(method, 'melts/nobody'))).toEqual(['melt/not-found ']);
  });
});

describe('attachments', () => {
  const picture = readFileSync(new URL('../../../../test/fixtures/grey.png', import.meta.url));
  const scan = Buffer.from('# two theta, counts\n43.5 1200\n50.7 540\n');
  let id: string;
  beforeEach(async () => {
    id = (await recorded()).id;
  });
  const attach = (name: string, body: Buffer, type = 'application/octet-stream') =>
    server.ask({
      method: 'POST',
      url: `/api/v1/melts/${id}/attachments?name=${encodeURIComponent(name)}`,
      headers: { 'content-type': type },
      payload: body,
    });

  test('a picture comes back as it was given, as what it is, and cannot run', async () => {
    const attached = await attach('etched.svg', picture);
    expect(attached.statusCode).toBe(201);
    expect(attached.json()).toMatchObject({ name: 'etched.svg', type: 'image/png', size: picture.length });
    const file = await server.ask({ url: attached.headers.location as string });
    expect(file.rawPayload.equals(picture)).toBe(true);
    expect(file.headers).toMatchObject({
      'content-type': 'image/png',
      'content-security-policy': "default-src 'none'; sandbox",
      'x-content-type-options': 'nosniff',
    });
    expect((await send('GET', `melts/${id}`)).json().attachments).toHaveLength(1);
  });

  test('a page that is attached is text to be saved, whatever it is called', async () => {
    const page = Buffer.from('<!doctype html><script>alert(1)</script>');
    const attached = await attach("it's a page.html", page);
    const { headers } = await server.ask({ url: attached.headers.location as string });
    expect(headers['content-type']).toBe('text/plain; charset=utf-8');
    expect(headers['content-disposition']).toBe("attachment; filename*=UTF-8''it%27s%20a%20page.html");
  });

  test('one that is taken away is not served, and comes back', async () => {
    const { id: file } = (await attach('scan.xy', scan)).json();
    expect((await send('DELETE', `melts/${id}/attachments/${file}`)).json()).toEqual([]);
    const gone = await server.ask({ url: `/api/v1/melts/${id}/attachments/${file}` });
    expect(codesOf(gone)).toEqual(['attachment/not-found ']);
    expect((await send('POST', `melts/${id}/attachments/${file}/restore`)).json()).toHaveLength(1);
    // Brought back already: nothing is wrong with that. Never there: the id is.
    expect((await send('POST', `melts/${id}/attachments/${file}/restore`)).json()).toHaveLength(1);
    const never = await send('POST', `melts/${id}/attachments/zzz/restore`);
    expect(never.statusCode).toBe(404);
    expect(codesOf(never)).toEqual(['attachment/not-found ']);
  });

  test('one whose file is cut off or gone is a fault of the server that nobody keeps or saves', async () => {
    const stored = (await attach('scan.xy', scan)).json();
    const url = `/api/v1/melts/${id}/attachments/${stored.id}`;
    const path = join(server.files, stored.id);
    for (const spoil of [() => truncateSync(path, 3), () => rmSync(path)]) {
      spoil();
      const answer = await server.ask({ url });
      expect(answer.statusCode).toBe(500);
      expect(codesOf(answer)).toEqual(['server/fault ']);
      expect(answer.headers['cache-control']).toBe('no-store');
      expect(answer.headers['content-disposition']).toBeUndefined();
    }
  });

  test('what is no such file, too large, or has no name is refused', async () => {
    expect(codesOf(await attach('program', Buffer.from([0x7f, 0x45, 0x4c, 0x46, 0, 1])))).toEqual([
      'attachment/type ',
    ]);
    expect(codesOf(await attach('nothing', Buffer.alloc(0)))).toEqual(['attachment/type ']);
    expect(codesOf(await attach('../../etc/passwd', scan))).toEqual(['attachment/name /name']);
    expect(codesOf(await attach('scan.xy', scan, 'text/html'))).toEqual(['request/content-type ']);
    const large = await attach('large.txt', Buffer.alloc(20_000_001, 'a'));
    expect(large.statusCode).toBe(413);
    expect(codesOf(large)).toEqual(['request/too-large ']);
    expect((await send('GET', `melts/${id}`)).json().attachments).toEqual([]);
  });

  test('there is an end of them', async () => {
    for (let file = 0; file < 50; file++) expect((await attach(`${file}.xy`, scan)).statusCode).toBe(201);
    expect(codesOf(await attach('51.xy', scan))).toEqual(['attachment/too-many ']);
  });

  test('what is sent at once, or brought back, does not pass the end either, and leaves no file', async () => {
    const { id: away } = (await attach('away.xy', scan)).json();
    await send('DELETE', `melts/${id}/attachments/${away}`);
    for (let file = 0; file < 48; file++) expect((await attach(`${file}.xy`, scan)).statusCode).toBe(201);
    const before = readdirSync(server.files).length;
    const answers = await Promise.all([49, 50, 51, 52, 53].map((file) => attach(`${file}.xy`, scan)));
    expect(answers.map(({ statusCode }) => statusCode).sort()).toEqual([201, 201, 409, 409, 409]);
    expect(readdirSync(server.files)).toHaveLength(before + 2);
    const restored = await send('POST', `melts/${id}/attachments/${away}/restore`);
    expect(codesOf(restored)).toEqual(['attachment/too-many ']);
    expect((await send('GET', `melts/${id}`)).json().attachments).toHaveLength(50);
  });

  test('a file that the database does not take does not stay', async () => {
    const folder = await temporaryFolder('attachments');
    onTestFinished(() => folder.remove());
    // A database in which the melt does not exist.
    const elsewhere = openStore({ file: null, columns: [] });
    const files = attachmentFiles(folder.path);
    const refusing = await testServer({ attachments: { table: elsewhere.melts, files } });
    onTestFinished(async () => {
      await refusing.close();
      elsewhere.close();
    });
    const made = await refusing.ask({
      method: 'POST',
      url: '/api/v1/melts',
      payload: entry({ charge: null }),
    });
    const answer = await refusing.ask({
      method: 'POST',
      url: `/api/v1/melts/${made.json().id}/attachments?name=scan.xy`,
      headers: { 'content-type': 'application/octet-stream' },
      payload: scan,
    });
    expect(answer.statusCode).toBe(500);
    expect(readdirSync(folder.path)).toEqual([]);
  });

  test('types are told by the first bytes', () => {
    const of = (...bytes: number[]) => attachmentType(Buffer.from([...bytes, ...Buffer.alloc(20)]));
    expect(of(0xff, 0xd8, 0xff, 0xe0)).toBe('image/jpeg');
    expect(of(...Buffer.from('RIFF1234WEBP'))).toBe('image/webp');
    expect(of(0x49, 0x49, 0x2a, 0)).toBe('image/tiff');
    expect(of(...Buffer.from('%PDF-1.7'))).toBe('application/pdf');
    expect(of(...Buffer.from('RIFF1234WAVE'))).toBeNull();
    expect(attachmentType(Buffer.from('43.5\t1200\r\n'))).toBe('text/plain');
    expect(attachmentType(Buffer.from([0xc3, 0x28]))).toBeNull();
  });
});

// The alloy as published, the melt within 0.2 % of its atoms by the masses above.
test('stands among the neighbours of an alloy as weighed, marked as own, and teaches the estimate nothing', async () => {
  const asked = { composition: 'CoCrFeMnNi' };
  const of = (nearest: { melt: string | null }[], id: string) => nearest.find(({ melt }) => melt === id);
  const before = (await send('POST', 'explain', asked)).json();
  const { id, composition } = await recorded({ name: 'Beside the published', phases: ['FCC', 'B2'] });
  const told = (await send('POST', 'explain', asked)).json();
  const [screened] = (await send('POST', 'screen', { compositions: ['CoCrFeMnNi'] })).json();
  for (const { nearest } of [told, screened]) {
    expect(of(nearest, id)).toMatchObject({
      ...{ formula: 'Beside the published', own: true, import: null, composition },
      ...{ phases: 'FCC+B2', methods: ['X-ray diffraction'] },
    });
    expect(of(nearest, id)).toHaveProperty('distance', expect.closeTo(0.0017, 3));
    expect(nearest.filter(({ own }: { own: boolean }) => !own)).toHaveLength(5);
  }
  const paragraph = told.paragraphs.find(({ subject }: { subject: string }) => subject === 'broughtIn');
  expect(paragraph.text).toMatch(
    /Beside the published \(own melt, as weighed .*Cr 20\.2.* at\.%\), less than 1 % of the atoms apart: FCC\+B2, observed by X-ray diffraction/,
  );
  expect(told.phase).toEqual(before.phase);
  await send('DELETE', `melts/${id}`);
  expect(of((await send('POST', 'explain', asked)).json().nearest, id)).toBeUndefined();
});
