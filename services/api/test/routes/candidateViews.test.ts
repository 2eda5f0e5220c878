import type {
  Candidate,
  CandidateValues,
  ElementUse,
  PublishedOver,
  SearchDistributions,
  TradeOff,
} from '@tiegel/contract';
import { factsFor } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { valuesOf } from '@tiegel/screening';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { fixtureSearch, type TestServer, testServer } from '../fixtures/testServer.ts';

const { specification } = fixtureSearch('six-5pct-omega');
let server: TestServer;
let id: string;
/** all kept candidates, from the pages of the API */
let all: Candidate[];
beforeAll(async () => {
  server = await testServer();
  id = (await server.search({ ...specification, keep: 900 })).id;
  all = (await get<{ items: Candidate[] }>('candidates?limit=1000')).items;
});
afterAll(() => server.close());

const ask = (path: string) => server.ask({ url: `/api/v1/searches/${id}/${path}` });
async function get<T>(path: string): Promise<T> {
  const answer = await ask(path);
  if (answer.statusCode !== 200) throw new Error(answer.body);
  return answer.json();
}

test('columns of values are those of the candidates, with the same filters', async () => {
  const half = [...all].map(({ quantities }) => quantities.density!).sort((a, b) => a - b)[450]!;
  const { ranks, values, quantities, every, meeting, among } = await get<CandidateValues>(
    `values?quantities=density,omega&max.density=${half}&has=Fe`,
  );
  const meant = all.filter(({ quantities: of, composition }) => of.density! <= half && 'Fe' in composition);
  expect(meant.length).toBeGreaterThan(10);
  expect(ranks).toEqual(meant.map(({ rank }) => rank));
  expect(quantities).toEqual(['density', 'omega']);
  expect(values).toEqual([
    meant.map((one) => one.quantities.density),
    meant.map((one) => one.quantities.omega),
  ]);
  expect({ every, meeting }).toEqual({ every: 1, meeting: meant.length });
  expect(among.kept).toBe(900);
});

test('more candidates than asked for are sampled evenly, with all of the best, and the answer says so', async () => {
  const { ranks, every, meeting } = await get<CandidateValues>('values?limit=100');
  expect({ every, meeting }).toEqual({ every: 9, meeting: 900 });
  expect(ranks.slice(0, 200)).toEqual(Array.from({ length: 200 }, (_, place) => place + 1));
  expect(ranks.slice(200, 203)).toEqual([208, 217, 226]);
});

test('without quantities the answer counts', async () => {
  const { values, meeting } = await get<CandidateValues>('values?without=Al&limit=1');
  expect(values).toEqual([]);
  expect(meeting).toBe(all.filter(({ composition }) => !('Al' in composition)).length);
});

test('elements are counted with each amount that occurs', async () => {
  const { elements, meeting } = await get<ElementUse>('element-use');
  expect(meeting).toBe(900);
  for (const { symbol, candidates, amounts } of elements) {
    const those = all.filter(({ composition }) => symbol in composition);
    expect(candidates).toBe(those.length);
    for (const { atomicPercent, candidates: count } of amounts) {
      const same = those.filter(({ composition }) => Math.abs(composition[symbol]! - atomicPercent) < 1e-9);
      expect(same).toHaveLength(count);
    }
    expect(amounts.reduce((sum, amount) => sum + amount.candidates, 0)).toBe(candidates);
  }
  expect(elements.map((one) => one.candidates)).toEqual(
    elements.map((one) => one.candidates).sort((a, b) => b - a),
  );
});

test('no candidate beats one of the front in a quantity without losing in the other', async () => {
  const path = 'trade-off?first=density&second=meltingTemperature&preferFirst=low&preferSecond=high';
  const { items, meeting } = await get<TradeOff>(path);
  expect(meeting).toBe(900);
  expect(items.length).toBeGreaterThan(1);
  const values = all.map(({ quantities: { density, meltingTemperature } }) => [
    density!,
    meltingTemperature!,
  ]);
  const beaten = ([density, melting]: number[]) =>
    values.some(([d, m]) => d! <= density! && m! >= melting! && (d! < density! || m! > melting!));
  for (const item of items) expect(beaten(item.values)).toBe(false);
  expect(values.filter((one) => !beaten(one))).toHaveLength(items.reduce((sum, { alike }) => sum + alike, 0));
  expect(items[0]!.values[0]).toBe(Math.min(...values.map(([density]) => density!)));
});

test('distributions of a small grid are exact and agree with the counts of the search', async () => {
  const { counts, specification: asked } = server.searches.view(id);
  const { sample, exact, passed, error, quantities, meeting } =
    await get<SearchDistributions>('distributions');
  expect(quantities.map(({ quantity }) => quantity)).toEqual([
    ...new Set([...asked.rank, ...asked.limits].map(({ quantity }) => quantity)),
  ]);
  const total = (spread: SearchDistributions['quantities'][number]['kept']) =>
    spread.counts.reduce((sum, count) => sum + count, 0) + spread.below + spread.above + spread.missing;
  for (const { grid, passing, kept, edges } of quantities) {
    expect(total(grid!)).toBe(sample);
    expect(total(passing!)).toBe(Math.round(passed * sample));
    expect(total(kept)).toBe(900);
    expect(edges).toHaveLength(grid!.counts.length + 1);
  }
  expect(meeting).toBe(900);
  expect(exact).toBe(counts.points <= 20_000);
  const share = counts.passed! / counts.points;
  if (exact) expect(passed).toBeCloseTo(share, 12);
  // The interval holds in 19 of 20 draws, and the draw is the same each time.
  else expect(Math.abs(passed - share)).toBeLessThan(error);
});

test('the kept ones of a distribution are those that the filters leave, in the right bins', async () => {
  const { quantities, meeting } = await get<SearchDistributions>(
    'distributions?quantities=density&without=Al',
  );
  const [{ edges, kept }] = quantities as [SearchDistributions['quantities'][number]];
  const values = all
    .filter(({ composition }) => !('Al' in composition))
    .map((one) => one.quantities.density!);
  expect(meeting).toBe(values.length);
  for (const [bin, count] of kept.counts.entries()) {
    const inside = values.filter((value) => value >= edges[bin]! && value < edges[bin + 1]!);
    // A value on an edge may be told to either side by the last digit.
    expect(Math.abs(inside.length - count)).toBeLessThanOrEqual(1);
  }
});

interface SystemsAnswer {
  items: { system: string; kept: number; best: Candidate; published: { alloys: number } | null }[];
  next: number | null;
  explored: {
    kept: number;
    published: number;
    keptPublished: number;
    publishedNotKept: { system: string }[];
  };
}

test('systems come by their best candidate, page after page, and say whether they are published', async () => {
  const expected = Map.groupBy(all, ({ composition }) => Object.keys(composition).sort().join(' '));
  const first = await get<SystemsAnswer>('systems?limit=2');
  const rest = await get<SystemsAnswer>(`systems?at=${first.next}&limit=1000`);
  const items = [...first.items, ...rest.items];
  expect(rest.next).toBeNull();
  expect(items.map(({ system, kept, best }) => [system, kept, best])).toEqual(
    [...expected].map(([system, those]) => [system, those.length, those[0]]),
  );
  const published = new Set(
    publishedAlloys().map(({ composition }) => Object.keys(composition).sort().join(' ')),
  );
  for (const { system, published: found } of items) expect(found !== null).toBe(published.has(system));
  expect(first.explored.kept).toBe(expected.size);
});

test('the unexplored and the published ones are all systems together', async () => {
  const [yes, no] = await Promise.all([
    get<SystemsAnswer>('systems?explored=yes&limit=1000'),
    get<SystemsAnswer>('systems?explored=no&limit=1000'),
  ]);
  expect(yes.items.every(({ published }) => published !== null)).toBe(true);
  expect(no.items.every(({ published }) => published === null)).toBe(true);
  expect(yes.items.length + no.items.length).toBe(yes.explored.kept);
  expect(yes.items).toHaveLength(yes.explored.keptPublished);
  expect(yes.explored.published).toBe(yes.explored.keptPublished + yes.explored.publishedNotKept.length);
});

test('systems are a file, too: all of them, with the filters, each with its best in full', async () => {
  const file = async (query: string) => {
    const answer = await server.ask({ url: `/api/v1/searches/${id}/systems/export?${query}` });
    expect(answer.statusCode).toBe(200);
    return answer;
  };
  const items = (await get<SystemsAnswer>('systems?explored=no&max.density=9&limit=1000')).items;
  expect(items.length).toBeGreaterThan(1);
  const ndjson = await file('explored=no&max.density=9&format=ndjson');
  expect(ndjson.headers['content-disposition']).toMatch(new RegExp(`${id}-unexplored\\.ndjson"$`));
  const [head, ...lines] = ndjson.body
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(lines).toEqual(items);
  expect(head.export).toMatchObject({
    search: id,
    rows: 'systems',
    selection: { ranges: [{ quantity: 'density', max: 9 }], explored: 'no' },
  });
  const csv = await file('explored=no&max.density=9&format=csv');
  expect(csv.headers['content-type']).toBe('text/csv; charset=utf-8');
  const [names, ...rows] = csv.body.split('\n').filter((line) => line !== '' && !line.startsWith('# '));
  expect(csv.body).toMatch(/^# search: .*\n(# .*\n)*# selection: \{.*"explored":"no"\}\nplace,system,/m);
  expect(names).toMatch(/^place,system,kept,best rank,best composition \(at\.%\),.*,density \(g\/cm3\),/);
  expect(names).toMatch(/,published alloys,published phases,melts recorded here,own alloys$/);
  const density = names!.split(',').indexOf('density (g/cm3)');
  expect(rows.map((row) => [row.split(',')[1], row.split(',')[density]])).toEqual(
    items.map(({ system, best }) => [system, String(best.quantities.density)]),
  );
  const refused = await server.ask({ url: `/api/v1/searches/${id}/systems/export?format=xlsx` });
  expect(refused.json()).toMatchObject({ status: 400, faults: [{ pointer: '/format' }] });
});

test('published alloys come with values by the same definitions', async () => {
  const { items } = await get<{ items: { formula: string; inPool: boolean; values: (number | null)[] }[] }>(
    'published?quantities=density,cost',
  );
  expect(items).toHaveLength(publishedAlloys().length);
  const facts = factsFor(Object.keys(publishedAlloys()[0]!.composition));
  expect(items[0]!.values[0]).toBe(valuesOf(publishedAlloys()[0]!.composition, facts, ['density']).density);
  expect(items.some(({ inPool }) => inPool)).toBe(true);
});

test.each([
  ['values?quantities=densty', 400, 'request/invalid', '/quantities'],
  ['values?quantities=a,b,c,d,e,f,g,h,i', 400, 'request/wrong-value', '/quantities'],
  ['values?limit=0', 400, 'request/out-of-range', '/limit'],
  ['trade-off?first=density&second=omega&preferFirst=low', 400, 'request/missing-key', '/preferSecond'],
  [
    'trade-off?first=density&second=nothing&preferFirst=low&preferSecond=low',
    400,
    'request/invalid',
    '/quantities',
  ],
  ['element-use?has=Xx', 400, 'element/unknown', '/has'],
  ['systems?explored=perhaps', 400, 'request/wrong-value', '/explored'],
])('%s is refused with what would be right', async (path, status, code, pointer) => {
  const answer = await ask(path);
  expect(answer.statusCode).toBe(status);
  expect(answer.json().faults[0]).toMatchObject({ code, pointer });
});

test('quantities that a search alone has are filtered and ordered by like all others, everywhere', async () => {
  const lets = { heatPerMass: 'meltingTemperature / density' };
  const own = (await server.search({ ...specification, keep: 900, lets })).id;
  const fetch = async <T>(path: string): Promise<T> => {
    const answer = await server.ask({ url: `/api/v1/searches/${own}/${path}` });
    if (answer.statusCode !== 200) throw new Error(answer.body);
    return answer.json();
  };
  const { items } = await fetch<{ items: Candidate[] }>('candidates?limit=1000');
  const values = items.map(({ quantities }) => quantities.heatPerMass!);
  const middle = values.toSorted((a, b) => a - b)[450]!;
  const found = await fetch<{ items: Candidate[] }>(
    `candidates?order=heatPerMass&direction=desc&max.heatPerMass=${middle}&limit=1000`,
  );
  expect(found.items.map(({ quantities }) => quantities.heatPerMass)).toEqual(
    values.filter((value) => value <= middle).sort((a, b) => b - a),
  );
  const { meeting } = await fetch<CandidateValues>(`values?max.heatPerMass=${middle}&limit=1`);
  expect(meeting).toBe(found.items.length);
  const csv = await server.ask({
    url: `/api/v1/searches/${own}/export?format=csv&max.heatPerMass=${middle}`,
  });
  expect(csv.body.split('\n').filter((line) => /^\d/.test(line))).toHaveLength(meeting);

  const refused = async (id: string, query: string) =>
    (await server.ask({ url: `/api/v1/searches/${id}/candidates?${query}` })).json().faults[0];
  expect(await refused(own, 'max.heatPerMass=much')).toMatchObject({
    code: 'request/wrong-value',
    pointer: '/max.heatPerMass',
  });
  expect(await refused(own, 'min.densty=1')).toMatchObject({
    code: 'request/unknown-key',
    pointer: '/min.densty',
  });
  expect(await refused(id, 'max.heatPerMass=1')).toMatchObject({ code: 'request/unknown-key' });
});

test('a melt that was recorded explores its system and lies among the published alloys', async () => {
  const before = await get<SystemsAnswer>('systems?explored=no&limit=1000');
  const [unexplored] = before.items;
  const symbols = unexplored!.system.split(' ');
  const entry = {
    ...{
      name: 'A first trial',
      date: '2026-11-20',
      charge: null,
      ingot: null,
      process: 'arc melting',
      anneal: null,
    },
    weighed: symbols.map((material) => ({ material, mass: 10 })),
    ...{ phases: ['FCC'], methods: ['X-ray diffraction'], hardness: null, density: null, notes: '' },
  };
  const recorded = await server.ask({ method: 'POST', url: '/api/v1/melts', payload: entry });
  expect(recorded.statusCode, recorded.body).toBe(201);
  const after = await get<SystemsAnswer>('systems?explored=no&limit=1000');
  expect(after.items.map(({ system }) => system)).toEqual(
    before.items.map(({ system }) => system).filter((system) => system !== unexplored!.system),
  );
  const { melts } = await get<{ melts: { name: string; phases: string; values: (number | null)[] }[] }>(
    'published?quantities=density',
  );
  expect(melts).toHaveLength(1);
  expect(melts[0]).toMatchObject({ name: 'A first trial', phases: 'FCC' });
  expect(melts[0]!.values[0]).toBeGreaterThan(4);
});

test('published alloys have no value of what is no quantity, whatever its name', async () => {
  const { items } = await get<PublishedOver>('published?quantities=density,constructor,toString');
  expect(items.length).toBeGreaterThan(100);
  for (const { values } of items) expect(values).toEqual([expect.any(Number), null, null]);
});
