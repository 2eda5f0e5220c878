import { expect, test } from 'vitest';
import { columns, pairColumns, priceColumn, sources } from '../src/index.ts';

test('what people read is set as in print: apostrophes, raised exponents of units', () => {
  const described = [...columns, ...pairColumns, priceColumn].flatMap(({ name, meaning }) => [name, meaning]);
  const texts = [...described, ...Object.values(sources).map(({ text }) => text)];
  expect(texts.length).toBeGreaterThan(40);
  expect(texts.filter((text) => /\p{L}'\p{L}|\bc?m[23]\b/u.test(text))).toEqual([]);
});
