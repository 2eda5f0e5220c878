import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer();
});
afterAll(() => server.close());

const screen = async (compositions: unknown) =>
  server.ask({ method: 'POST', url: '/api/v1/screen', payload: { compositions } });

// Valence electron counts and entropies of equimolar alloys, by hand: worked-values.csv, status exact.
const exact = readFileSync(new URL('../../../../test/fixtures/worked-values.csv', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n')
  .slice(1)
  .map((line) => line.split(','))
  .filter((fields) => fields[6] === 'exact' && (fields[2] === 'VEC' || fields[2] === 'dS'))
  .map(([alloy, composition, what, , value, tolerance]) => ({
    alloy: alloy!,
    composition: composition!,
    id: what === 'VEC' ? 'valenceElectronConcentration' : 'configurationalEntropy',
    value: Number(value),
    tolerance: Number(tolerance),
  }));

test('worked values come back over HTTP, in the order of the request', async () => {
  expect(exact.length).toBeGreaterThan(20);
  const answers = (await screen(exact.map(({ composition }) => composition))).json();
  exact.forEach(({ alloy, id, value, tolerance }, index) => {
    expect(Math.abs(answers[index].quantities[id] - value), `${id} of ${alloy}`).toBeLessThanOrEqual(
      tolerance,
    );
  });
});

test('text and amounts by symbol are two spellings of one alloy, amounts of any total', async () => {
  const [text, amounts, double] = (await screen(['Fe3Ni', { Ni: 25, Fe: 75 }, { Fe: 1.5, Ni: 0.5 }])).json();
  expect(text).toEqual({ ...amounts, composition: { Fe: 75, Ni: 25 } });
  expect(double.composition).toEqual(amounts.composition);
});

test('a quantity without a value is null', async () => {
  const [pure] = (await screen(['Ni'])).json();
  expect(pure.quantities).toMatchObject({ omega: null, sizeMismatch: 0, configurationalEntropy: 0 });
});

test('a thousand alloys and more are screened at once', async () => {
  const alloys = Array.from(
    { length: 1500 },
    (_, index) => `Al${1 + (index % 40)}Co20Cr20Fe${20 + (index % 7)}Ni20`,
  );
  const answers = (await screen(alloys)).json();
  expect(answers).toHaveLength(1500);
  expect(answers[40]).toEqual((await screen([alloys[40]])).json()[0]);
});

// Worked values of this project: own calculation by an independent script.
test('an alloy has verdicts, phases, what competes and strength, at the conditions sent', async () => {
  const payload = { compositions: ['NbMoTaW'], conditions: { serviceTemperature: 1273 } };
  const [alloy] = (await server.ask({ method: 'POST', url: '/api/v1/screen', payload })).json();
  expect(alloy.strength).toMatchObject({ temperature: 1273, bcc: { value: expect.closeTo(357.3, 0) } });
  expect(alloy.quantities.yieldStrengthBcc).toBeCloseTo(alloy.strength.bcc.value, 9);
  expect(alloy.demixing.temperature).toBeCloseTo(22.797, 3);
  expect(alloy.phase.basis).toBe('ok');
  expect(alloy.criteria.guo2011Bcc).toBe(true);
  expect(alloy.nearest[0].reports[0].phases).toBe('BCC');
});

test('wrong conditions and wrong alloys are named together', async () => {
  const payload = { compositions: ['Xx'], conditions: { serviceTemperature: 1, grainsize: 2 } };
  const answer = await server.ask({ method: 'POST', url: '/api/v1/screen', payload });
  expect(answer.json().faults.map(({ pointer }: { pointer: string }) => pointer)).toEqual([
    '/conditions/serviceTemperature',
    '/conditions/grainsize',
    '/compositions/0',
  ]);
});

test('all bad ones are named, those of the wrong form among them', async () => {
  const answer = await screen(['CoNi', 'CoXx', { Ni: -1 }, 7, { Fe: 'much' }, 'NiNi']);
  expect(answer.statusCode).toBe(400);
  const pointers = answer.json().faults.map(({ pointer }: { pointer: string }) => pointer);
  expect(pointers.toSorted()).toEqual([
    '/compositions/1',
    '/compositions/2/Ni',
    '/compositions/3',
    '/compositions/4/Fe',
    '/compositions/5',
  ]);
});

test('more than a hundred bad ones are all named', async () => {
  const answer = await screen(Array.from({ length: 300 }, () => 'Xx'));
  expect(answer.json().faults).toHaveLength(300);
});
