import type { CandidateQuery, ProblemCode } from '@tiegel/contract';
import { demoPrices, factsFor } from '@tiegel/elements';
import { valuesOf } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { demonstration } from '../src/index.ts';
import { handQueue } from './fixtures/handQueue.ts';
import { laboratory } from './fixtures/laboratory.ts';
import { answer, candidatesOf, everything, question } from './fixtures/questions.ts';
import { refused } from './fixtures/refused.ts';
import { until } from './fixtures/until.ts';

const eager = () => laboratory({ queue: handQueue({ eager: true }) });

test.each([
  ['with limits and ties', question()],
  ['of equal shares', question({ fractions: 'equimolar', components: { min: 2, max: 4 } })],
  ['with a target', question({ rank: [{ quantity: 'density', prefer: { target: 7.5 } }], limits: [] })],
  ['that keeps only the best of each system', question({ keep: 0, keepPerSystem: 3 })],
  [
    'with conditions of its own',
    question({
      conditions: { serviceTemperature: 900, grainSize: 20 },
      limits: [{ quantity: 'yieldStrengthBcc', min: 100 }],
      rank: [{ quantity: 'mixingFreeEnergy', prefer: 'low' }],
    }),
  ],
  ['that keeps everything', question({ keep: 100_000, limits: [] })],
])('a search %s finds what one go over the grid finds', async (_, request) => {
  const { searches, queue } = await eager();
  const { id, created } = await searches.submit(request);
  const view = await searches.finished(id);
  const expected = answer(request);
  expect(created).toBe(true);
  expect(queue.sent.length).toBeGreaterThan(3);
  expect(view).toMatchObject({ state: 'done', reason: null, counts: expected.counts });
  expect(view.progress).toEqual({ points: expected.counts.points, total: expected.counts.points });
  const found = candidatesOf(searches, id);
  expect(found.map(({ score }) => score)).toEqual(expected.scores);
  expect(found.map(({ rank }) => rank)).toEqual(expected.scores.map((_score, place) => place + 1));
  expect(view.kept).toBe(found.length);
});

test('a candidate has every quantity; the one ranked by is the score, and all are what screening says', async () => {
  const { searches } = await eager();
  const { id } = await searches.submit(question({ rank: [{ quantity: 'density', prefer: 'low' }] }));
  await searches.finished(id);
  const found = candidatesOf(searches, id);
  expect(found.length).toBeGreaterThan(50);
  for (const { composition, quantities, score } of found) {
    expect(quantities.density).toBe(score);
    const facts = factsFor(Object.keys(composition), { prices: demoPrices });
    for (const [quantity, value] of Object.entries(valuesOf(composition, facts))) {
      expect(quantities[quantity]).toBeCloseTo(value!, 10);
    }
  }
});

test('values of candidates are those at the conditions of the search', async () => {
  const { searches } = await eager();
  const conditions = { serviceTemperature: 900 };
  const { id } = await searches.submit(question({ conditions }));
  await searches.finished(id);
  const [first] = candidatesOf(searches, id);
  const { composition, quantities } = first!;
  const facts = factsFor(Object.keys(composition));
  const warm = valuesOf(composition, facts, ['homologousTemperature', 'yieldStrengthBcc'], conditions);
  for (const [name, value] of Object.entries(warm)) expect(quantities[name]).toBeCloseTo(value!, 9);
  expect(quantities.yieldStrengthBcc).toBeLessThan(valuesOf(composition, facts).yieldStrengthBcc!);
});

test('a search that keeps nothing has its counts', async () => {
  const { searches } = await eager();
  const request = question({ keep: 0, keepPerSystem: 0 });
  const { id } = await searches.submit(request);
  expect(await searches.finished(id)).toMatchObject({ counts: answer(request).counts, kept: 0 });
  expect(searches.candidates(id, everything)).toMatchObject({ items: [], next: null, among: { kept: 0 } });
});

test('when nothing passes, the result says which limit leaves least', async () => {
  const { searches } = await eager();
  const limits = [
    { quantity: 'density', max: 7.2 },
    { quantity: 'mixingEnthalpy', min: -5 },
    { quantity: 'valenceElectronConcentration', min: 8.7 },
  ];
  const { id } = await searches.submit(question({ limits }));
  const { notices, counts } = await searches.finished(id);
  expect(counts.passed).toBe(0);
  const least = Math.min(...counts.passedEach!);
  expect(counts.passedEach!.indexOf(least)).toBe(2);
  expect(notices.at(-1)).toContain(`valence electron concentration ≥ 8.7: ${least} of 1,490 points.`);
});

test('times are told: preparing, searching, storing', async () => {
  const { searches } = await eager();
  const { id } = await searches.submit(question());
  const view = await searches.finished(id);
  for (const seconds of [view.preparationSeconds, view.seconds, view.storingSeconds]) {
    expect(seconds).toBeGreaterThan(0);
    expect(seconds).toBeLessThan(60);
  }
  expect(Date.parse(view.finishedAt!)).toBeGreaterThanOrEqual(Date.parse(view.createdAt));
  expect(view.createdAt).toMatch(/^\d{4}-\d\d-\d\dT[\d:.]+Z$/);
});

test('the size of a search is told without starting it, with a time when there are workers', async () => {
  const { searches, queue } = await laboratory();
  expect(await searches.size(question())).toMatchObject({
    systems: 10,
    points: 1490,
    workers: 2,
    notices: [],
  });
  expect((await searches.size(question())).seconds).toBeGreaterThan(0);
  queue.present = 0;
  expect(await searches.size(question())).toMatchObject({ workers: 0, seconds: null });
  expect(searches.list()).toEqual([]);
});

test('a wrong request starts nothing', async () => {
  const { searches } = await laboratory({ maxPoints: 1000 });
  await expect(searches.submit(question())).rejects.toThrow(/1,490 points; at most 1,000/);
  await expect(searches.submit(null)).rejects.toThrow();
  await expect(searches.size(question())).rejects.toThrow(/1,490 points/);
  expect(searches.list()).toEqual([]);
});

test('a key makes one search, however often it comes, and belongs to its specification', async () => {
  const { searches } = await laboratory();
  const options = { idempotencyKey: 'monday' };
  const answers = await Promise.all([1, 2, 3].map(() => searches.submit(question(), options)));
  expect(new Set(answers.map(({ id }) => id)).size).toBe(1);
  expect(answers.filter(({ created }) => created)).toHaveLength(1);
  await expect(searches.submit(question({ keep: 71 }), options)).rejects.toThrow(
    refused('search/key-reused'),
  );
  // The same specification in other words: defaults written out.
  const same = await searches.submit(question({ version: 1 }), options);
  expect(same).toEqual({ id: answers[0]!.id, created: false });
  expect(searches.list()).toHaveLength(1);
});

test('a key that comes back with other hours, priority or sections is refused, and they are named', async () => {
  const { searches } = await laboratory();
  const schedule = { hours: { zone: 'UTC', from: '20:00', to: '06:00' }, priority: 'last' as const };
  const { id } = await searches.submit(question(), { idempotencyKey: 'tuesday', schedule });
  const again = (change: object, other: typeof schedule | undefined) =>
    searches.submit(question(change), {
      idempotencyKey: 'tuesday',
      ...(other === undefined ? {} : { schedule: other }),
    });
  expect(await again({}, structuredClone(schedule))).toEqual({ id, created: false });
  await expect(again({}, undefined)).rejects.toThrow(refused('search/key-reused'));
  await expect(again({}, undefined)).rejects.toThrow(/differs in hours, priority\.$/);
  const hours = { ...schedule.hours, to: '07:00' };
  await expect(again({ keep: 71 }, { ...schedule, hours })).rejects.toThrow(/differs in keep, hours\.$/);
  searches.schedule(id, { hours: null, priority: 'usual' });
  expect(await again({}, undefined)).toEqual({ id, created: false });
});

test('for a key the elements are sets, whatever their order', async () => {
  const { searches } = await laboratory();
  const options = { idempotencyKey: 'wednesday' };
  const pool = ['Al', 'Co', 'Cr', 'Fe', 'Ni', 'Ti'];
  const sets = (order: (symbols: string[]) => string[]) =>
    question({
      elements: {
        pool: order(pool),
        require: order(pool.slice(0, 2)),
        forbid: order(['Cu', 'V']),
      },
    });
  const { id } = await searches.submit(
    sets((symbols) => symbols),
    options,
  );
  expect(
    await searches.submit(
      sets((symbols) => symbols.toReversed()),
      options,
    ),
  ).toEqual({ id, created: false });
  await expect(searches.submit(question({ elements: { pool: pool.slice(1) } }), options)).rejects.toThrow(
    /differs in elements\.$/,
  );
});

test('what is unknown, or not finished, is told', async () => {
  const { searches, queue } = await laboratory();
  for (const ask of [searches.view, searches.pause, searches.resume, searches.cancel]) {
    expect(() => ask('nothing')).toThrow(refused('search/unknown'));
  }
  expect(() => searches.watch('nothing', () => {})).toThrow(/no search/);
  await expect(searches.finished('nothing')).rejects.toThrow(/no search/);
  const { id } = await searches.submit(question());
  await until(() => queue.waiting.length > 0);
  for (const ask of [() => searches.candidates(id, everything), () => searches.export(id, everything)]) {
    expect(ask).toThrow(refused('search/not-finished'));
  }
  expect(() => searches.candidate(id, 'AlCoCrNi')).toThrow(refused('search/not-finished'));
});

test('a query of candidates that makes no sense is refused with its place', async () => {
  const { searches } = await eager();
  const { id } = await searches.submit(question());
  await searches.finished(id);
  const wrong: [Partial<CandidateQuery>, ProblemCode, string][] = [
    [{ order: 'toughness' }, 'request/invalid', '/order'],
    [
      { ranges: [{ quantity: 'density' }, { quantity: 'x', max: 1 }] },
      'request/invalid',
      '/ranges/1/quantity',
    ],
    [{ limit: 0 }, 'request/invalid', '/limit'],
    [{ limit: 1001 }, 'request/invalid', '/limit'],
    [{ at: -1 }, 'request/invalid', '/at'],
    [{ at: 0.5 }, 'request/invalid', '/at'],
    [{ at: 1, after: 'x' }, 'request/after-and-at', '/at'],
    [{ after: 'x' }, 'request/invalid', '/after'],
  ];
  for (const [change, code, pointer] of wrong) {
    const ask = () => searches.candidates(id, { ...everything, ...change });
    expect(ask, JSON.stringify(change)).toThrow(refused(code, pointer));
  }
});

test('candidates are filtered among the kept ones, and it is said among how many', async () => {
  const { searches } = await eager();
  const { id } = await searches.submit(question());
  const { kept, counts } = await searches.finished(id);
  const query = { ...everything, has: ['Al'], ranges: [{ quantity: 'density', max: 7.4 }], order: 'density' };
  const page = searches.candidates(id, query);
  expect(page.among).toEqual({ kept, passed: counts.passed, points: counts.points });
  const all = candidatesOf(searches, id);
  const chosen = all.filter((one) => 'Al' in one.composition && one.quantities.density! <= 7.4);
  expect(chosen.length).toBeGreaterThan(3);
  expect(new Set(page.items.map(({ rank }) => rank))).toEqual(new Set(chosen.map(({ rank }) => rank)));
});

test('a candidate is found by its composition, in any order and notation', async () => {
  const { searches } = await eager();
  const { id } = await searches.submit(question({ fractions: 'equimolar', components: 3, limits: [] }));
  await searches.finished(id);
  const one = searches.candidate(id, 'Al33.333333333Co33.333333333Ni33.333333333');
  expect(searches.candidate(id, 'NiCoAl')).toEqual(one);
  expect(Object.keys(one.composition)).toEqual(['Al', 'Co', 'Ni']);
  expect(() => searches.candidate(id, 'AlCoNi2')).toThrow(refused('candidate/unknown'));
  expect(() => searches.candidate(id, 'AlCoCr')).toThrow(refused('candidate/unknown'));
  expect(() => searches.candidate(id, 'Al-')).toThrow(/character/);
});

test('an export names search and columns, and gives the rows in the order asked', async () => {
  const { searches } = await eager();
  const { id } = await searches.submit(question());
  await searches.finished(id);
  const { head, rows } = searches.export(id, { ...everything, order: 'density', direction: 'desc' });
  expect(head.search).toEqual(searches.view(id));
  const densities = [...rows].map(({ quantities }) => quantities.density!);
  expect(densities).toEqual(densities.toSorted((a, b) => b - a));
  expect(Object.keys(candidatesOf(searches, id)[0]!.quantities)).toEqual(head.columns);
});

test('a list that somebody enters is in force from then on, and after a restart; older searches keep theirs', async () => {
  const first = await eager();
  expect(first.searches.prices()).toEqual(demoPrices);
  const { id } = await first.searches.submit(question());
  const own = { ...demoPrices, currency: 'CHF', date: '2027-01-01', invented: false };
  first.searches.imports.replacePrices(own);
  const { id: later } = await first.searches.submit(question());
  await Promise.all([id, later].map(first.searches.finished));
  await first.close();
  const { searches } = await laboratory({ file: first.file });
  expect(searches.prices()).toEqual(own);
  expect(searches.view(id).prices).toEqual({ currency: 'EUR', date: demoPrices.date, invented: true });
  expect(searches.view(later).prices).toEqual({ currency: 'CHF', date: '2027-01-01', invented: false });
  expect(searches.view(later).dataVersion).not.toBe(searches.view(id).dataVersion);
});

test('without prices a search runs, and cost is missing', async () => {
  const { searches } = await laboratory({ prices: null, queue: handQueue({ eager: true }) });
  expect(searches.prices()).toBeNull();
  const { id } = await searches.submit(question());
  expect((await searches.finished(id)).prices).toBeNull();
  expect(candidatesOf(searches, id)[0]?.quantities).toMatchObject({ cost: null, costPerLitre: null });
});

test('the demonstration is a search that finds something, and says what it is not', async () => {
  const { searches } = await laboratory({ pointsPerChunk: 5000, queue: handQueue({ eager: true }) });
  const { id } = await searches.submit(demonstration.specification);
  const { counts, notices } = await searches.finished(id);
  expect(notices).toEqual([]);
  expect(counts.passed).toBeGreaterThan(300);
  expect(counts.passed).toBeLessThan(counts.points / 5);
  expect([demonstration.story, ...demonstration.cautions].join(' ')).toMatch(/invented.*corrosion/is);
});
