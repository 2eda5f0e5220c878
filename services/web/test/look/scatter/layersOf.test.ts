import type { PublishedOver } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { layersInWords } from '../../../src/look/scatter/layersInWords.ts';
import { layersOf } from '../../../src/look/scatter/layersOf.ts';

// Invented.
const composition = { Co: 50, Ni: 50 };
const alloy = { composition, inPool: true, phases: 'FCC', references: 1, doi: [], values: [8.9, 1700] };
const answer = (items: PublishedOver['items']): PublishedOver => ({
  ...{ quantities: ['density', 'meltingTemperature'], items, melts: [], dataVersion: 'a' },
});
const published = { ...alloy, formula: 'CoNi', own: false };
const brought = { ...alloy, formula: 'trial 7', own: true };
const layers = (...items: PublishedOver['items']) =>
  layersOf(answer(items), 'pool', 'density', 'meltingTemperature').map(({ name, points }) => ({
    name,
    words: points.map(({ words }) => words),
  }));

test('an alloy that was brought in is not told as published', () => {
  expect(layers(published)).toEqual([{ name: 'Published alloys', words: ['published CoNi'] }]);
  expect(layers(published, brought)).toEqual([
    { name: 'Published and own alloys', words: ['published CoNi', 'own alloy “trial 7”'] },
  ]);
});

test('layers of other data than the candidates say so', () => {
  const over = [{ name: 'Published alloys', points: [] }];
  expect(layersInWords(over, 'a', 'a')).toHaveLength(1);
  expect(layersInWords(over, null, 'a')).toHaveLength(1);
  expect(layersInWords(over, 'b', 'a')[1]).toBe(
    'These are of data version b, the candidates of data version a.',
  );
  expect(layersInWords([], 'b', 'a')).toEqual([]);
});
