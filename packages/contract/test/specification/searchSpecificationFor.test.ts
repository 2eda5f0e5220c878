import fc from 'fast-check';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { ProblemError } from '../../src/index.ts';
import { check, faultOf, faultsIn, ids, onlyFault, request, schema, symbols } from '../fixtures/known.ts';

const impeller = {
  version: 1,
  name: 'Cobalt-free impeller alloy',
  elements: {
    pool: ['Al', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'Ti', 'V'],
    require: ['Cr', 'Fe', 'Ni'],
    forbid: ['Co'],
  },
  components: { min: 5, max: 6 },
  fractions: {
    step: 5,
    min: 5,
    max: 35,
    each: { Al: { max: 15 }, Cr: { min: 15 }, Cu: { max: 10 }, Mo: { max: 10 } },
  },
  limits: [
    { quantity: 'density', max: 8 },
    { quantity: 'mixingEnthalpy', min: -15, max: 5 },
  ],
  rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
  keep: 1000,
  keepPerSystem: 1,
  tally: 'each',
};

test('a complete specification passes unchanged', () => {
  expect(check(impeller)).toEqual({ specification: impeller, notices: [] });
});

test('a specification that was checked passes again unchanged', () => {
  const { specification } = check(request());
  expect(check(JSON.parse(JSON.stringify(specification))).specification).toEqual(specification);
});

test('what is left out has its default', () => {
  expect(check(request()).specification).toEqual({
    version: 1,
    name: 'Unnamed search',
    elements: { pool: ['Ni', 'Al', 'Co', 'Cr', 'Fe'], require: [], forbid: [] },
    components: { min: 5, max: 5 },
    fractions: { step: 5, min: 5, max: 100, each: {} },
    limits: [],
    rank: [{ quantity: 'density', prefer: 'low' }],
    keep: 1000,
    keepPerSystem: 0,
    tally: 'each',
  });
});

test('elements, components, fractions and rank are required', () => {
  expect(faultsIn({})).toEqual([
    'request/missing-key /elements',
    'request/missing-key /components',
    'request/missing-key /fractions',
    'request/missing-key /rank',
  ]);
});

test('what is no object at all is answered, too', () => {
  for (const sent of [null, [], 'text', 5, true]) expect(faultsIn(sent)).toEqual(['request/wrong-value ']);
  expect(faultsIn(undefined)).toEqual(['request/missing-key ']);
});

test('faults of one section do not hide those of another or between two', () => {
  const sent = request({ components: 9, rank: [{ quantity: 'densty', prefer: 'low' }], keep: 2.5 });
  expect(faultsIn(sent)).toEqual([
    'quantity/unknown /rank/0/quantity',
    'request/wrong-value /keep',
    'specification/pool-too-small /components',
  ]);
});

test('an unknown key names the nearest known one and is itself the place', () => {
  const fault = onlyFault(request({ keepPerSystm: 1 }));
  expect(fault).toMatchObject({ pointer: '/keepPerSystm' });
  expect(fault.detail).toContain('did you mean "keepPerSystem"?');
  expect(fault.remedy).toContain('fractions, limits, rank');
});

test('keys that JSON may hold and objects inherit are unknown keys like others', () => {
  const sent = JSON.parse(`{"__proto__": {}, "constructor": 1, ${JSON.stringify(request()).slice(1)}`);
  expect(faultsIn(sent)).toEqual(['request/unknown-key /__proto__', 'request/unknown-key /constructor']);
});

test('a front weighs two to four quantities, each once, high or low', () => {
  const front = [
    { quantity: 'density', prefer: 'low' },
    { quantity: 'sizeMismatch', prefer: 'high' },
  ];
  expect(check(request({ front })).specification.front).toEqual(front);
  expect(check(request()).specification).not.toHaveProperty('front');
  expect(faultsIn(request({ front: front.slice(0, 1) }))).toEqual(['request/length /front']);
  expect(faultsIn(request({ front: [...front, front[0]] }))).toEqual([
    'specification/front-repeated /front/2/quantity',
  ]);
  expect(
    faultsIn(request({ front: [front[0], { quantity: 'sizeMismatch', prefer: { target: 3 } }] })),
  ).toEqual(['request/wrong-value /front/1/prefer']);
  expect(faultsIn(request({ front: [front[0], { quantity: 'spread', prefer: 'low' }] }))).toEqual([
    'quantity/unknown /front/1/quantity',
  ]);
});

test('names of one’s own are known ids, and more of them than are read is a fault', () => {
  const lets = { merit: 'density / 8' };
  const named = request({ lets, rank: [{ quantity: 'merit', prefer: 'high' }] });
  expect(check(named).specification).toMatchObject({ lets, rank: [{ quantity: 'merit', prefer: 'high' }] });
  const many = Object.fromEntries(Array.from({ length: 17 }, (_, place) => [`merit${place}`, 'density']));
  expect(faultsIn(request({ lets: many }))).toEqual(['specification/too-many-lets /lets']);
  expect(faultsIn(request({ lets: { merit: 1 } }))).toEqual(['request/wrong-value /lets/merit']);
});

test('a megabyte where a name belongs is not sent back', () => {
  const long = 'x'.repeat(1_000_000);
  const fault = faultOf(request({ rank: [{ quantity: long, prefer: 'low' }] }), 'quantity/unknown');
  expect(fault.detail.length).toBeLessThan(200);
});

test('keep and keepPerSystem are whole numbers within their ranges', () => {
  for (const keep of [-1, 1_000_001])
    expect(faultsIn(request({ keep }))).toEqual(['request/out-of-range /keep']);
  for (const keepPerSystem of [-1, 21]) {
    expect(faultsIn(request({ keepPerSystem }))).toEqual(['request/out-of-range /keepPerSystem']);
  }
  for (const keep of [0, 1_000_000]) expect(faultsIn(request({ keep, keepPerSystem: 20 }))).toEqual([]);
});

test('a figure of merit or a quantity called "__proto__" is refused at its place', () => {
  const lets = JSON.parse('{"__proto__": "density", "light": "density"}');
  expect(faultsIn(request({ lets }))).toEqual(['expression/name /lets/__proto__']);
  const rank = [{ quantity: '__proto__', prefer: 'low' }];
  expect(faultsIn(request({ rank }))).toEqual(['quantity/unknown /rank/0/quantity']);
  expect(faultsIn(request({ lets, rank }))).toEqual([
    'quantity/unknown /rank/0/quantity',
    'expression/name /lets/__proto__',
  ]);
});

test('a name is one line of at most 200 characters', () => {
  expect(check(request({ name: ' Réponse n° 5 ' })).specification.name).toBe('Réponse n° 5');
  expect(check(request({ name: '' })).specification.name).toBe('Unnamed search');
  expect(faultsIn(request({ name: 'x'.repeat(201) }))).toEqual(['request/length /name']);
  for (const name of ['a\nb', 'a\u0000b', 'a\u0085b', 'a\u2028b', 'a\u2029b', '\ud800'])
    expect(faultsIn(request({ name }))).toEqual(['specification/name /name']);
});

test('whatever is sent, the check answers with a specification or with faults', () => {
  const part = fc.jsonValue({ maxDepth: 3 });
  const likely = fc.record(
    {
      elements: fc.oneof(part, fc.record({ pool: fc.array(fc.constantFrom(...symbols, 'Xx', '')) })),
      components: fc.oneof(part, fc.integer({ min: -1, max: 12 })),
      fractions: fc.oneof(part, fc.record({ step: fc.constantFrom(0, 1, 3, 5, 50), min: fc.double() })),
      limits: fc.oneof(
        part,
        fc.array(fc.record({ quantity: fc.constantFrom(...ids, 'x'), max: fc.double() })),
      ),
      rank: fc.oneof(part, fc.array(fc.record({ quantity: fc.constantFrom(...ids), prefer: part }))),
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(likely, (sent) => {
      try {
        expect(Number.isInteger(check(sent).specification.components.min)).toBe(true);
      } catch (error) {
        expect(error).toBeInstanceOf(ProblemError);
        for (const { detail, remedy } of (error as ProblemError).faults) {
          expect(detail).toMatch(/[.?]$/);
          expect(remedy.length).toBeGreaterThan(5);
        }
      }
    }),
  );
});

test('the form can be written as JSON Schema, with what may stand where', () => {
  const written = z.toJSONSchema(schema, { io: 'input' }) as { required: string[]; properties: object };
  expect(written.required).toEqual(['elements', 'components', 'fractions', 'rank']);
  expect(JSON.stringify(written.properties)).toContain(JSON.stringify(ids));
});
