import fc from 'fast-check';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { faultsOf } from '../../src/problem/faultsOf.ts';
import { descriptionAt, keysAt } from '../../src/problem/schemaAt.ts';

const schema = z.strictObject({
  size: z.int().min(1).max(9).describe('Write a size.').exactOptional(),
  mode: z.union([z.literal('all'), z.strictObject({ first: z.number() })]).describe('Write a mode.'),
  tags: z.array(z.string().max(3)).max(2).describe('Write tags.').exactOptional(),
});
const brief = (sent: unknown) => faultsOf(schema, sent).map(({ code, pointer }) => `${code} ${pointer}`);

test('what fits has no fault', () => {
  expect(faultsOf(schema, { mode: { first: 1 }, tags: ['a'] })).toEqual([]);
});

test('every fault is told at once, with the place of each', () => {
  expect(brief({ size: 0, mode: { first: 'x' }, tags: ['abcd'], sise: 1 })).toEqual([
    'request/out-of-range /size',
    'request/wrong-value /mode/first',
    'request/length /tags/0',
    'request/unknown-key /sise',
  ]);
});

test('a missing key is told at its own place, with what belongs there', () => {
  const [fault] = faultsOf(schema, {});
  expect(fault).toMatchObject({
    code: 'request/missing-key',
    pointer: '/mode',
    detail: 'mode is missing.',
    remedy: 'Write a mode.',
  });
});

test('where nothing is described, an object that is missing is told by its keys', () => {
  const plain = z.strictObject({ anneal: z.strictObject({ temperature: z.number(), hours: z.number() }) });
  expect(faultsOf(plain, {})[0]?.remedy).toBe('Write an object with temperature, hours.');
});

test('a value that may be left out for another one is described like any', () => {
  const left = z.strictObject({ hardness: z.number().nullable().describe('Write HV.').default(null) });
  expect(faultsOf(left, {})).toEqual([]);
  expect(faultsOf(left, { hardness: 'hard' })[0]?.remedy).toBe('Write HV.');
});

test('of several forms, that of the right kind says what is wrong inside', () => {
  expect(brief({ mode: { frist: 1 } })).toEqual([
    'request/missing-key /mode/first',
    'request/unknown-key /mode/frist',
  ]);
  expect(brief({ mode: 'some' })).toEqual(['request/wrong-value /mode']);
});

test('an infinite number is named as one too large', () => {
  const [fault] = faultsOf(schema, { mode: { first: JSON.parse('1e400') } });
  expect(fault?.detail).toBe('mode.first is a number too large, which is not possible here.');
});

test('a thousand faults are answered by the first hundred and a word on the rest', () => {
  const many = Object.fromEntries(Array.from({ length: 1000 }, (_, index) => [`k${index}`, 1]));
  const faults = faultsOf(schema, { mode: 'all', ...many });
  expect(faults).toHaveLength(101);
  expect(faults.at(-1)?.code).toBe('request/more-faults');
});

test('long texts are cut in the answer', () => {
  const [fault] = faultsOf(schema, { mode: 'x'.repeat(10_000) });
  expect(fault?.detail.length).toBeLessThan(120);
});

test('whatever is sent, the answer is faults or none, never a crash', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (sent) => {
      expect(faultsOf(schema, sent).length > 0).toBe(!schema.safeParse(sent).success);
    }),
  );
});

test('keys and descriptions are found through options and choices', () => {
  expect(keysAt(schema, [])).toEqual(['size', 'mode', 'tags']);
  expect(keysAt(schema, ['mode'])).toEqual(['first']);
  expect(descriptionAt(schema, ['size'])).toBe('Write a size.');
  expect(descriptionAt(schema, ['none'])).toBeNull();
  const nullable = z.strictObject({
    anneal: z.strictObject({ hours: z.number().gt(0).describe('Write hours.') }).nullable(),
  });
  expect(faultsOf(nullable, { anneal: { hours: 0 } })[0]?.remedy).toBe('Write hours.');
});
