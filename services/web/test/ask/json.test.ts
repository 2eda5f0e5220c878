import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fileNameOf } from '../../src/ask/json/fileNameOf.ts';
import { writeJson } from '../../src/ask/json/writeJson.ts';

test('the text is JSON of the same value, whatever it is', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      const sent = JSON.parse(JSON.stringify(value));
      expect(JSON.parse(writeJson(sent))).toEqual(sent);
    }),
  );
});

test('what fits into a line stands in one', () => {
  expect(
    writeJson({ pool: ['Al', 'Fe'], limits: [{ quantity: 'density', max: 8 }], name: 'x'.repeat(40) }),
  ).toBe(
    `{
  "pool": ["Al", "Fe"],
  "limits": [{ "quantity": "density", "max": 8 }],
  "name": "${'x'.repeat(40)}"
}`,
  );
});

test.each([
  ['Cobalt-free impeller alloy', 'cobalt-free-impeller-alloy.spec.json'],
  ['Kälte / Tief?', 'kalte-tief.spec.json'],
  ['', 'search.spec.json'],
  ['…', 'search.spec.json'],
])('a search called “%s” is saved as %s', (name, file) => {
  expect(fileNameOf(name)).toBe(file);
});
