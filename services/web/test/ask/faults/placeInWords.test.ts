import { expect, test } from 'vitest';
import { emptyDraft, limitRow, rankRow } from '../../../src/ask/draft/draft.ts';
import { placeInWords } from '../../../src/ask/faults/placeInWords.ts';

const draft = { ...emptyDraft, limits: [limitRow('density')], rank: [rankRow('omega')] };
const nameOf = (id: string) => ({ density: 'Density', omega: 'Entropy–enthalpy ratio' })[id] ?? id;

test.each([
  ['/fractions/each/Cr/max', 'Chromium'],
  ['/fractions/min', 'Shares'],
  ['/components/min', 'Number of elements'],
  ['/limits/0/max', 'Limit on density'],
  ['/rank/0/from', 'Ranking by entropy–enthalpy ratio'],
  ['/rank', 'Ranking'],
  ['/keepPerSystem', 'What is kept'],
  ['', ''],
])('%s lies in %s', (pointer, words) => {
  expect(placeInWords(pointer, draft, nameOf)).toBe(words);
});
