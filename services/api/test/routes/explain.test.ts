import { evidence } from '@tiegel/insight';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type TestServer, testServer } from '../fixtures/testServer.ts';

let server: TestServer;
beforeAll(async () => {
  server = await testServer();
});
afterAll(() => server.close());

const post = async (url: string, payload: object) =>
  (await server.ask({ method: 'POST', url: `/api/v1/${url}`, payload })).json();

test('an explanation has the numbers, and the same in paragraphs', async () => {
  const told = await post('explain', { composition: 'CoCrFeMnNi', conditions: { grainSize: 20 } });
  // Worked value of this project: own calculation by an independent script.
  expect(told.demixing.temperature).toBeCloseTo(239.98, 2);
  expect(told.conditions).toMatchObject({ grainSize: 20, serviceTemperature: 293.15 });
  const paragraph = (subject: string) =>
    told.paragraphs.find((one: { subject: string }) => one.subject === subject);
  expect(paragraph('published').text).toMatch(/FCC in \d+ of \d+/);
  expect(paragraph('phases').trust).toBe(told.phase.trust);
  expect(paragraph('demixing').trust).toBe(told.demixing.trust);
  expect(paragraph('strength').text).toContain('grain size 20 µm');
});

test('at.% by symbol and a text are two spellings of one alloy', async () => {
  const composition = { Ni: 1, Co: 1 };
  expect(await post('explain', { composition })).toEqual(await post('explain', { composition: 'CoNi' }));
});

// VEC by hand: cobalt has 9, so nickel (10) raises it from 8, to 8.2 for the whole share; manganese (7) lowers it, and so do both.
test('substitutes stand best first, those that keep the limits before the others', async () => {
  const limits = [{ quantity: 'valenceElectronConcentration', min: 8 }];
  const { items } = await post('substitute', {
    composition: 'CoCrFeMnNi',
    replace: 'Co',
    with: ['Ni', 'Mn'],
    limits,
  });
  expect(items).toHaveLength(6);
  expect(items.map((one: { limits: boolean[] }) => one.limits[0])).toEqual([
    true,
    true,
    false,
    false,
    false,
    false,
  ]);
  const nickel = items.find((one: { by: object }) => JSON.stringify(one.by) === '{"Ni":20}');
  expect(nickel.changes.valenceElectronConcentration).toBeCloseTo(0.2, 9);
  expect(nickel.phase.singleSolution).toBeGreaterThan(0);
  expect(nickel.cost).toBe(nickel.quantities.cost);
});

test('substitutes outside the space of a search say why and stand behind; a space that is wrong is refused in place', async () => {
  const asked = { composition: 'CoCrFeMnNi', replace: 'Fe', with: ['Ni', 'Cu'] };
  const space = {
    elements: { pool: ['Cr', 'Cu', 'Fe', 'Mn', 'Ni'], require: ['Co'] },
    components: 5,
    fractions: { step: 5, max: 35 },
  };
  const { items } = await post('substitute', { ...asked, space });
  const outside = Object.fromEntries(
    items.map(({ by, outsideSpace }: { by: object; outsideSpace: string[] }) => [
      JSON.stringify(by),
      outsideSpace,
    ]),
  );
  expect(outside).toMatchObject({
    '{"Cu":20}': [],
    '{"Ni":20}': ['4 elements, at least 5', 'Ni 40 at.%, at most 35'],
    '{"Cu":10}': ['6 elements, at most 5'],
  });
  expect(items[0].outsideSpace).toEqual([]);
  expect((await post('substitute', asked)).items[0].outsideSpace).toEqual([]);
  const wrong = await post('substitute', { ...asked, space: { ...space, fractions: { step: 3 } } });
  expect(wrong).toMatchObject({ status: 400, code: 'specification/step' });
  expect(JSON.stringify(wrong)).toContain('/space/fractions/step');
});

test('every other element is tried where none is named', async () => {
  const { items } = await post('substitute', { composition: 'CoCrFeMnNi', replace: 'Co' });
  expect(items.length).toBeGreaterThan(20);
});

// Balanced accuracy of Zhang 2008 on the open published alloys, ± 0.002: own calculation by an independent script.
test('the evidence has the record of each rule and the scores of the estimate', async () => {
  const { criteria, phaseEstimate } = (await server.ask({ url: '/api/v1/evidence' })).json();
  const zhang = criteria.find(({ id }: { id: string }) => id === 'zhang2008');
  expect(Math.abs(zhang.balancedAccuracy - 0.47)).toBeLessThanOrEqual(0.002);
  expect(zhang.tp + zhang.fp + zhang.fn + zhang.tn).toBe(zhang.n);
  expect(zhang.interval[0]).toBeLessThan(zhang.balancedAccuracy);
  expect(phaseEstimate).toMatchObject({ n: 310, systems: 108 });
});

test('nothing of the evidence is lost on the way', async () => {
  const told = (await server.ask({ url: '/api/v1/evidence' })).json();
  expect(told).toMatchObject(JSON.parse(JSON.stringify(evidence())));
});

// 10 g of NiAl (6.8507 and 3.1493 g) in steps of 0.1 g; by hand: VEC = 3 + 7 x, x = (6.7507/58.693) / (6.7507/58.693 + 3.2493/26.982) and so on.
test('weighing says what a balance leaves certain, and which limits and criteria it can turn', async () => {
  const limits = [
    { quantity: 'valenceElectronConcentration', min: 6.5 },
    { quantity: 'density', max: 20 },
  ];
  const found = await post('weighing', { composition: 'AlNi', mass: 10, resolution: 0.1, limits });
  const { least, greatest } = found.quantities.valenceElectronConcentration;
  expect(least).toBeCloseTo(3 + 7 * 0.48851, 3);
  expect(greatest).toBeCloseTo(3 + 7 * 0.511688, 3);
  expect(found.masses.Ni + found.masses.Al).toBeCloseTo(10, 9);
  expect(found.limits.map(({ canFlip }: { canFlip: boolean }) => canFlip)).toEqual([true, false]);
  expect(found.limits.map(({ limit }: { limit: object }) => limit)).toEqual(limits);
  expect(found.criteria.zhang2008).toMatchObject({ passes: false, canFlip: false });
});

test.each([
  [{ composition: 'AlNi', mass: 1, resolution: 1 }, 'weighing/resolution', '/resolution'],
  [
    { composition: 'AlBCCoCrCuFeMnMoNbNiTiV', mass: 10, resolution: 0.1 },
    'weighing/too-many-elements',
    '/composition',
  ],
])('what cannot be weighed is refused: %o', async (payload, code, pointer) => {
  const { faults } = await post('weighing', payload);
  expect(faults).toMatchObject([{ code, pointer }]);
});

test('typical ranges are the quartiles over the published alloys', async () => {
  const typical = (await server.ask({ url: '/api/v1/quantities/typical' })).json();
  const { low, middle, high } = typical.density;
  expect(low).toBeLessThan(middle);
  expect(middle).toBeLessThan(high);
  expect(typical.cost).toBeNull();
});
