import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compositionDistance, diversePick } from '../../src/index.ts';
import { alloys } from '../fixtures/alloys.ts';

const binary = (percent: number) => ({ Al: percent, Ni: 100 - percent });
const line = [40, 41, 42, 60, 10, 90].map(binary);

test('the best, then the farthest from it, then the farthest from both', () => {
  expect(diversePick(line, 3)).toEqual([0, 5, 4]);
});

test('of equally far ones the better ranked is picked', () => {
  expect(diversePick([50, 70, 30].map(binary), 2)).toEqual([0, 1]);
});

test('only the best of each set of elements, where that is asked for', () => {
  const ranked = [...line, { Al: 50, Co: 50 }, { Al: 10, Co: 90 }];
  expect(diversePick(ranked, 5, { onePerSystem: true })).toEqual([0, 6]);
});

test('an element of amount 0 is not in the set', () => {
  expect(
    diversePick(
      [
        { Al: 1, Ni: 1 },
        { Al: 2, Co: 0, Ni: 1 },
      ],
      2,
      { onePerSystem: true },
    ),
  ).toEqual([0]);
});

test('each place once, no more than there are, none of none', () => {
  expect(diversePick(line, 99).sort()).toEqual([0, 1, 2, 3, 4, 5]);
  expect(diversePick([], 3)).toEqual([]);
  expect(diversePick(line, 0)).toEqual([]);
});

// The greedy choice keeps at least half of the best possible spread (Gonzalez 1985).
test('three picks are at least half as far apart as the best three with the same first', () => {
  const spread = (alloysPicked: Record<string, number>[]) =>
    Math.min(
      ...alloysPicked.flatMap((one, at) =>
        alloysPicked.slice(0, at).map((other) => compositionDistance(one, other)),
      ),
    );
  fc.assert(
    fc.property(fc.array(alloys(['Al', 'Co', 'Cr', 'Ni']), { minLength: 3, maxLength: 12 }), (ranked) => {
      const picked = spread(diversePick(ranked, 3).map((place) => ranked[place]!));
      let best = 0;
      for (let i = 1; i < ranked.length; i++) {
        for (let j = 1; j < i; j++) best = Math.max(best, spread([ranked[0]!, ranked[i]!, ranked[j]!]));
      }
      expect(picked).toBeGreaterThanOrEqual(best / 2 - 1e-12);
    }),
  );
});
