import { type Candidate, type CandidatePage, candidatePageSchema } from '@tiegel/contract';
import { demoPrices, factsFor, formatComposition, spacedComposition } from '@tiegel/elements';
import { screening } from '@tiegel/screening';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { fixtureSearch, type TestServer, testServer } from '../fixtures/testServer.ts';

const { specification, expected } = fixtureSearch('six-5pct-omega');
let server: TestServer;
let id: string;
beforeAll(async () => {
  server = await testServer();
  id = (await server.search(specification)).id;
});
afterAll(() => server.close());

const ask = (query: string) => server.ask({ url: `/api/v1/searches/${id}/candidates${query}` });
const page = async (query: string): Promise<CandidatePage> => {
  const answer = await ask(query);
  if (answer.statusCode !== 200) throw new Error(answer.body);
  return answer.json();
};

/** Every page of a query, one after another. */
async function all(query: string): Promise<Candidate[]> {
  const items: Candidate[] = [];
  let next: string | null = '';
  while (next !== null) {
    const one: CandidatePage = await page(
      `${query}${next === '' ? '' : `&after=${encodeURIComponent(next)}`}`,
    );
    items.push(...one.items);
    next = one.next;
  }
  return items;
}

test('the first page is the hundred best, as an independent script found them', async () => {
  const { items, next, among } = await page('');
  const best = expected.candidates.slice(0, 100);
  expect(items.map(({ composition }) => spacedComposition(composition))).toEqual(best.map(([text]) => text));
  // The script adds in another order, which moves the last digits.
  items.forEach(({ score }, index) => {
    expect(Math.abs(score! / best[index]![1]! - 1)).toBeLessThan(1e-12);
  });
  expect(items.map(({ rank }) => rank)).toEqual(items.map((_, index) => index + 1));
  expect(next).not.toBeNull();
  expect(among).toEqual({ kept: 250, passed: expected.counts.passed, points: expected.counts.points });
});

test('a page is what its schema says, though nothing checks it on its way', async () => {
  const found = await page('?order=density&has=Cr');
  expect(found.items.length).toBeGreaterThan(10);
  expect(candidatePageSchema.parse(found)).toEqual(found);
});

test('pages follow each other without a gap or a repetition to the end', async () => {
  const items = await all('?limit=60');
  expect(items.map(({ rank }) => rank)).toEqual(Array.from({ length: 250 }, (_, index) => index + 1));
});

test('no order is being made while nobody waits for one', async () => {
  await page('?order=cost');
  const answer = await server.ask({ url: `/api/v1/searches/${id}/orders` });
  expect([answer.statusCode, answer.json()]).toEqual([200, []]);
  const unknown = await server.ask({ url: '/api/v1/searches/nowhere/orders' });
  expect([unknown.statusCode, unknown.json().code]).toEqual([404, 'search/unknown']);
});

test('a page can begin at any row', async () => {
  const { items } = await page('?at=120&limit=3');
  expect(items.map(({ rank }) => rank)).toEqual([121, 122, 123]);
});

test('filters keep what has every value in its range, bounds included, and the elements asked for', async () => {
  const everything = await all('?limit=1000');
  const middle = (id: string) =>
    everything.map(({ quantities }) => quantities[id]!).toSorted((a, b) => a - b)[125]!;
  const [densest, coolest] = [middle('density'), middle('meltingTemperature')];
  const items = await all(
    `?limit=7&max.density=${densest}&min.meltingTemperature=${coolest}&has=Ni,Fe&without=Al`,
  );
  const passes = ({ quantities, composition }: Candidate) =>
    quantities.density! <= densest &&
    quantities.meltingTemperature! >= coolest &&
    'Ni' in composition &&
    'Fe' in composition &&
    !('Al' in composition);
  expect(items).toEqual(everything.filter(passes));
  expect(items.length).toBeGreaterThan(7);
  const [one, ...others] = await all(`?min.density=${densest}&max.density=${densest}`);
  expect(one!.quantities.density).toBe(densest);
  expect(others.length).toBeLessThan(20);
});

test.each(['asc', 'desc'])('any quantity orders the rows, %s', async (direction) => {
  const items = await all(`?limit=90&order=density&direction=${direction}`);
  const densities = items.map(({ quantities }) => quantities.density!);
  expect(items).toHaveLength(250);
  expect(densities).toEqual(densities.toSorted((a, b) => (direction === 'asc' ? a - b : b - a)));
});

test('every candidate has every quantity as screening has it', async () => {
  const values = screening(factsFor(['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Ni'], { prices: demoPrices }));
  for (const { composition, quantities } of await all('?limit=1000')) {
    const screened = values(composition);
    expect(Object.keys(quantities)).toEqual(Object.keys(screened));
    // Parts of the grid and at.% differ in scale, which may move the last digit of a quotient.
    for (const [id, value] of Object.entries(quantities)) {
      const right = screened[id]!;
      expect(Math.abs(value! - right), id).toBeLessThanOrEqual(1e-13 * Math.max(1, Math.abs(right)));
    }
  }
});

test('a candidate has an address by its composition', async () => {
  const [, , third] = (await page('')).items;
  const answer = await ask(`/${formatComposition(third!.composition)}`);
  expect(answer.json()).toEqual(third);
});

test.each(['/Al20Co20Cr20Fe20Ni20', '/Co50Ni50'])('%s was not kept', async (composition) => {
  expect((await ask(composition)).statusCode).toBe(404);
});

test('an address that is no composition is refused', async () => {
  const answer = await ask('/Xx50Ni50');
  expect([400, 404]).toContain(answer.statusCode);
});

test.each([
  ['?order=densty', '/order'],
  ['?has=Ni,Xx', '/has'],
  ['?min.density=9&max.density=8', '/min.density'],
  ['?at=1&after=x', '/at'],
  ['?limit=0', '/limit'],
  ['?min.density=', '/min.density'],
  ['?min.density=1&min.density=2', '/min.density'],
  ['?after=nothing-that-was-ever-a-key', '/after'],
])('%s is refused at its place', async (query, pointer) => {
  const answer = await ask(query);
  expect(answer.statusCode).toBe(400);
  expect(answer.json().faults[0].pointer).toBe(pointer);
});

test('a parameter that is nearly right is answered with the one that was meant', async () => {
  const [fault] = (await ask('?max.densty=8')).json().faults;
  expect(fault).toMatchObject({ code: 'request/unknown-key', pointer: '/max.densty' });
  expect(fault.detail).toContain('did you mean "max.density"?');
});

test('members of the Pareto front are asked for by front=yes, of a search that has one', async () => {
  const front = [
    { quantity: 'density', prefer: 'low' },
    { quantity: 'omega', prefer: 'high' },
  ];
  const { id: withFront } = await server.search({ ...specification, front, keep: 20 });
  const url = `/api/v1/searches/${withFront}`;
  const { items } = (
    await server.ask({ url: `${url}/candidates?front=yes&order=density` })
  ).json() as CandidatePage;
  expect(items.length).toBeGreaterThan(1);
  expect(items.every((one) => one.front)).toBe(true);
  const rising = items.map(({ quantities }) => quantities.omega!);
  expect(rising).toEqual(rising.toSorted((one, other) => one - other));
  const csv = (await server.ask({ url: `${url}/export?format=csv&front=yes` })).body.split('\n');
  const rows = csv.filter((line) => line !== '' && !line.startsWith('#'));
  expect(rows[0]).toMatch(/,score,front$/);
  expect(rows.slice(1)).toHaveLength(items.length);
  for (const row of rows.slice(1)) expect(row).toMatch(/,1$/);
  expect((await ask('?front=yes')).json()).toMatchObject({ code: 'request/invalid' });
});
