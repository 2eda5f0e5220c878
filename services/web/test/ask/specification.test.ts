import { searchSpecificationFor } from '@tiegel/contract';
import { symbols } from '@tiegel/elements';
import { conditions, quantities } from '@tiegel/screening';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emptyDraft, letRow, limitRow, rankRow } from '../../src/ask/draft/draft.ts';
import { type AcceptedSpecification, draftOf } from '../../src/ask/draft/draftOf.ts';
import { specificationOf } from '../../src/ask/draft/specificationOf.ts';

const { check } = searchSpecificationFor({
  quantities,
  lateQuantities: [{ id: 'lateOne' }],
  elements: symbols,
  conditions: Object.values(conditions),
});

/** The example of the contract. */
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
} satisfies AcceptedSpecification;

test('a specification comes through the form unchanged', () => {
  expect(specificationOf(draftOf(impeller)).specification).toEqual(impeller);
});

const amount = fc.integer({ min: 1, max: 100 });
const entry = fc.record({
  quantity: fc.constantFrom(...quantities.map(({ id }) => id)),
  prefer: fc.oneof(fc.constantFrom('high' as const, 'low' as const), fc.record({ target: fc.integer() })),
});
const positive = fc.double({ min: 0.001, max: 1e6, noNaN: true });
const anchored = entry.chain((one) => {
  const anchors: fc.Arbitrary<object> =
    typeof one.prefer === 'string'
      ? fc.record({ from: fc.integer({ max: 0 }), to: positive, weight: amount })
      : fc.record({ within: positive, shape: amount });
  return anchors.map((more) => ({ ...one, ...more }));
});
const specification = fc.record({
  version: fc.constant(1 as const),
  name: fc.constantFrom('A name', 'Another'),
  elements: fc.shuffledSubarray([...symbols], { minLength: 8, maxLength: 16 }).map((some) => ({
    pool: some.slice(0, -2).sort(),
    require: some.slice(0, 2).sort(),
    forbid: some.slice(-2).sort(),
  })),
  components: fc.constantFrom({ min: 2, max: 4 }, { min: 3, max: 3 }),
  fractions: fc.oneof(
    fc.constant('equimolar' as const),
    fc.constantFrom(0.25, 2.5, 5).map((step) => ({ step, min: step, max: 100 - step })),
  ),
  limits: fc.uniqueArray(
    fc.record({
      quantity: fc.constantFrom(...quantities.map(({ id }) => id)),
      min: fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e6, max: 1e6 }),
    }),
    { maxLength: 4 },
  ),
  rank: fc.oneof(fc.tuple(entry), fc.array(anchored, { minLength: 2, maxLength: 4 })),
  lets: fc.dictionary(fc.stringMatching(/^[a-z]{3,8}Own$/), fc.constantFrom('density / cost', 'omega ^ 2'), {
    minKeys: 1,
    maxKeys: 3,
  }),
  keptOnly: fc.constantFrom([{ quantity: 'lateOne', max: 0.5 }], [{ quantity: 'lateOne', min: -1, max: 2 }]),
  conditions: fc.constantFrom({ annealTemperature: 1473.15 }, { serviceTemperature: 77, grainSize: 2.5 }),
  tally: fc.constantFrom('each' as const, 'all' as const, 'none' as const),
  keep: fc.integer({ min: 0, max: 1_000_000 }),
  keepPerSystem: fc.integer({ min: 0, max: 20 }),
});

test('whatever the server accepts means the same after it went through the form', () => {
  fc.assert(
    fc.property(specification, (drawn) => {
      // As JSON travels: −0 becomes 0.
      const sent = JSON.parse(JSON.stringify(drawn));
      const written = specificationOf(draftOf(sent));
      expect(written.unclear).toEqual({});
      expect(check(written.specification).specification).toEqual(check(sent).specification);
    }),
  );
});

test('empty fields are left to the defaults of the server', () => {
  const { specification: written } = specificationOf({
    ...emptyDraft,
    keep: '',
    bounds: { min: '', max: '' },
  });
  expect(written).not.toHaveProperty('keep');
  expect(written.fractions).toEqual({ step: 5 });
});

test('a number that cannot be read is named by its place, and nothing is sent in its stead', () => {
  const { specification: written, unclear } = specificationOf({
    ...emptyDraft,
    components: { min: 'five', max: '6' },
    limits: [limitRow('density', { max: '8;0' })],
  });
  expect(unclear).toEqual({
    '/components/min': '“five” is not a number. Write digits alone, as in 12.5.',
    '/limits/0/max': '“8;0” is not a number. Write digits alone, as in 12.5.',
  });
  expect(written.components).toEqual({ max: 6 });
});

test('a limit without bounds is not sent, and the others keep their rows', () => {
  const { specification: written, limitRows } = specificationOf({
    ...emptyDraft,
    limits: [limitRow('density'), limitRow('omega', { min: '1,1' })],
  });
  expect(written.limits).toEqual([{ quantity: 'omega', min: 1.1 }]);
  expect(limitRows).toEqual([1]);
});

test('anchors go along exactly where several quantities are combined', () => {
  const anchors = { from: '1', to: '2', within: '3', weight: '4', shape: '5' };
  const one = rankRow('omega', { prefer: 'high', ...anchors });
  const two = rankRow('density', { prefer: 'target', target: '7', ...anchors });
  expect(specificationOf({ ...emptyDraft, rank: [one] }).specification.rank).toEqual([
    { quantity: 'omega', prefer: 'high' },
  ]);
  expect(specificationOf({ ...emptyDraft, rank: [one, two] }).specification.rank).toEqual([
    { quantity: 'omega', prefer: 'high', from: 1, to: 2, weight: 4, shape: 5 },
    { quantity: 'density', prefer: { target: 7 }, within: 3, weight: 4, shape: 5 },
  ]);
});

test('a part of a specification that the form has no field for goes through it as it is', () => {
  const later = { ...impeller, laterKey: { some: ['value'] } };
  expect(specificationOf(draftOf(later)).specification).toEqual(later);
});

test('a front goes through the form unchanged', () => {
  const front = [
    { quantity: 'density', prefer: 'low' as const },
    { quantity: 'valenceElectronConcentration', prefer: 'high' as const },
  ];
  expect(specificationOf(draftOf({ ...impeller, front })).specification).toEqual({ ...impeller, front });
});

test('of two expressions with one name only the first is sent, and the second says so at its name', () => {
  const lets = [
    letRow('', ''),
    letRow('mine', 'density / cost'),
    letRow('mine', 'omega'),
    letRow('other', ''),
  ];
  const { specification: written, unclear, letRows } = specificationOf({ ...emptyDraft, lets });
  expect(written.lets).toEqual({ mine: 'density / cost' });
  expect(unclear).toEqual({
    '/lets/2/name': 'Another expression is called mine, too.',
    '/lets/3': 'Write the expression, such as youngsModulus / density.',
  });
  expect([...letRows]).toEqual([['mine', 1]]);
});
