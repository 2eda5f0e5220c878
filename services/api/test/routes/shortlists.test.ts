import { afterAll, beforeAll, expect, test } from 'vitest';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer();
});
afterAll(() => server.close());

type Payload = Record<string, unknown>;
const send = async (method: 'POST' | 'PATCH', url: string, payload: Payload) => {
  const answer = await server.ask({ method, url: `/api/v1${url}`, payload });
  return { status: answer.statusCode, body: answer.json() };
};
const get = (url: string) => server.ask({ url: `/api/v1${url}` });
const begin = async () =>
  (await send('POST', '/shortlists', { name: 'Impeller <b>', by: 'Ana' })).body.id as string;
const change = (key: string, act: Payload, seen = 1, by = 'Ana') => ({ key, by, seen, act });

test('a shortlist is begun, changed, read with its history and listed', async () => {
  const id = await begin();
  const { status, body } = await send('PATCH', `/shortlists/${id}`, {
    changes: [
      change('a', { kind: 'add', entry: 'CoCrFeMnNi' }),
      change('b', { kind: 'note', entry: 'NiMnFeCrCo', text: 'Known to work cold.' }),
      change('c', { kind: 'status', entry: 'CoCrFeMnNi', status: 'agreed' }),
    ],
  });
  expect(status).toBe(200);
  expect(body.entries).toMatchObject([
    { entry: 'Co20Cr20Fe20Mn20Ni20', status: { value: 'agreed' }, notes: [{ text: 'Known to work cold.' }] },
  ]);
  const read = (await get(`/shortlists/${id}`)).json();
  expect(read.history).toHaveLength(4);
  expect((await get('/shortlists')).json().items[0]).toMatchObject({ id, name: { value: 'Impeller <b>' } });
});

test('a change that is sent twice counts once; of wrong ones none is taken and each is named', async () => {
  const id = await begin();
  const changes = [change('a', { kind: 'add', entry: 'CoNi' })];
  await send('PATCH', `/shortlists/${id}`, { changes });
  const again = await send('PATCH', `/shortlists/${id}`, { changes });
  expect(again.body).toMatchObject({ sequence: 2, entries: [{ entry: 'Co50Ni50' }] });
  const wrong = await send('PATCH', `/shortlists/${id}`, {
    changes: [
      change('b', { kind: 'add', entry: 'CrFe' }),
      change('c', { kind: 'add', entry: 'CoXx' }),
      change('d', { kind: 'note', entry: 'CuNi', text: 'Not there.' }),
    ],
  });
  expect(wrong.status).toBe(400);
  expect(wrong.body.faults.map(({ code, pointer }: Payload) => `${code} ${pointer}`)).toEqual([
    'element/unknown /changes/1/act/entry',
    'shortlist/no-entry /changes/2/act/entry',
  ]);
  expect((await get(`/shortlists/${id}`)).json().sequence).toBe(2);
  const form = await send('PATCH', `/shortlists/${id}`, { changes: [{ key: '', by: 'Ana', seen: 0 }] });
  expect(form.status).toBe(400);
  expect((await get('/shortlists/none')).json()).toMatchObject({ status: 404, code: 'shortlist/unknown' });
});

test('a pick of a search spreads over its candidates', async () => {
  const { id: search } = await server.search({
    elements: { pool: ['Al', 'Co', 'Cr', 'Fe', 'Ni'] },
    components: 3,
    fractions: { step: 10, min: 10 },
    rank: [{ quantity: 'density', prefer: 'low' }],
  });
  const id = await begin();
  const pick = { search, count: 6, onePerSystem: true, by: 'Ben' };
  const { body } = await send('POST', `/shortlists/${id}/pick`, pick);
  expect(body.entries).toHaveLength(6);
  const systems = body.entries.map(({ entry }: { entry: string }) => entry.replaceAll(/[\d.]/g, ''));
  expect(new Set(systems).size).toBe(6);
  expect(body.entries[0]).toMatchObject({ search, addedBy: 'Ben', status: { value: 'proposed' } });
});

test('the page opens without the program: no script, nothing loaded, what people typed is text', async () => {
  const id = await begin();
  await send('PATCH', `/shortlists/${id}`, {
    changes: [
      change('a', { kind: 'add', entry: 'CoCrFeMnNi' }),
      change('b', { kind: 'note', entry: 'CoCrFeMnNi', text: '<script>alert(1)</script>' }),
      change('c', { kind: 'add', entry: 'NbMoTaW' }),
      change('d', { kind: 'remove', entry: 'NbMoTaW' }, 4),
    ],
  });
  const page = await get(`/shortlists/${id}/export?format=html`);
  expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
  expect(page.headers['content-disposition']).toContain(`shortlist-${id}.html`);
  expect(page.body).not.toMatch(/<script|<link|<img|src=|href=|url\(/);
  expect(page.body).toContain('Impeller &lt;b&gt;');
  expect(page.body).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
  expect(page.body).toContain('Co20 Cr20 Fe20 Mn20 Ni20');
  expect(page.body).not.toContain('Ta25');
  expect(page.body).toContain('invented for demonstration');
  const csv = await get(`/shortlists/${id}/export?format=csv`);
  const [head, first] = csv.body.split('\n');
  expect(head).toContain('density (g/cm3)');
  expect(first).toMatch(/^Co20Cr20Fe20Mn20Ni20,proposed,Ana,/);
});
