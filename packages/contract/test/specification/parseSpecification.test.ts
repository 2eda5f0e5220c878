import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ProblemError, parseSpecification } from '../../src/index.ts';

function placesIn(text: string): string[] {
  try {
    parseSpecification(text);
  } catch (error) {
    if (error instanceof ProblemError) return error.faults.map(({ pointer }) => pointer);
    throw error;
  }
  return [];
}

test('any JSON whose keys stand once is read as JSON reads it', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.nat({ max: 4 }), (value, indent) => {
      const text = JSON.stringify(value, null, indent);
      expect(parseSpecification(text)).toEqual(JSON.parse(text));
    }),
  );
});

test.each([
  ['{"a": 1, "b": {"a": 2}, "c": [{"a": 3}, {"a": 4}]}', []],
  ['{"a": 1, "a": 1}', ['/a']],
  ['{"a": 1, "b": 2, "a": 1, "a": 1}', ['/a', '/a']],
  ['[0, {"x": [[], {"y/z": 1, "y/z": 2}]}]', ['/1/x/1/y~1z']],
  ['{"\\u0061": 1, "a": 2}', ['/a']],
  ['{"a": "\\",\\"a\\":{", "b": "a"}', []],
  ['{"__proto__": 1, "__proto__": 2}', ['/__proto__']],
])('a key that stands twice is named with its place: %s', (text, places) => {
  expect(placesIn(text)).toEqual(places);
});

test('of thousands the first hundred are named', () => {
  expect(placesIn(`{${'"a":1,'.repeat(5000)}"a":1}`)).toHaveLength(100);
});
