import { readFileSync } from 'node:fs';
import peggy from 'peggy';
import { expect, test } from 'vitest';
import { parse } from '../../src/own/formulaParser.js';

const read = (name: string) => readFileSync(new URL(`../../src/own/${name}`, import.meta.url), 'utf8');

test('the parser is what its grammar generates', () => {
  const generated = peggy.generate(read('formula.peggy'), { output: 'source', format: 'es' });
  expect(read('formulaParser.js')).toBe(generated);
});

test('every node knows its place in the text', () => {
  expect(parse(' 2.5 * min(omega, 10)')).toEqual({
    kind: 'operator',
    operator: '*',
    left: { kind: 'number', value: 2.5, at: [1, 4] },
    right: {
      kind: 'call',
      name: 'min',
      values: [
        { kind: 'name', name: 'omega', at: [11, 16] },
        { kind: 'number', value: 10, at: [18, 20] },
      ],
      at: [7, 21],
    },
    at: [1, 21],
  });
});

test('brackets as deep as a text can hold take no time to speak of', () => {
  const deep = `${'('.repeat(499)}x${')'.repeat(499)}`;
  expect(parse(deep)).toMatchObject({ kind: 'name', name: 'x' });
});
