import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { ownEvidence } from '@tiegel/insight';
import { expect, test } from 'vitest';
import { keptEvidence } from '../../src/alloys/keptEvidence.ts';

const alloys = publishedAlloys()
  .filter(({ phases }) => phases !== null)
  .slice(0, 25);

test('is worked out once for the same alloys, and anew for others', () => {
  const found = keptEvidence(alloys, 'melts');
  expect(found).toEqual(ownEvidence(alloys));
  expect(keptEvidence(structuredClone(alloys), 'melts')).toBe(found);
  expect(keptEvidence(alloys.slice(1), 'melts')).toEqual(ownEvidence(alloys.slice(1)));
});

test('melts and alloys that were brought in do not stand for each other', () => {
  const melted = keptEvidence(alloys, 'melts');
  expect(keptEvidence(alloys, 'alloys')!.trust).toContain('brought in');
  expect(keptEvidence(alloys, 'melts')).toBe(melted);
});

test('without any there is none', () => expect(keptEvidence([], 'melts')).toBeNull());
