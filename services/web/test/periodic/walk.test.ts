import { elements, unavailable } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { type Direction, walk } from '../../src/periodic/walk.ts';

/** The periodic table on squared paper, lanthanides and actinides below, as the wide page draws it. */
const all = [...elements, ...unavailable].sort((a, b) => a.atomicNumber - b.atomicNumber);
const places = all.map(({ period, group, atomicNumber }) => {
  const column = group ?? atomicNumber - (period === 6 ? 56 : 88) + 3;
  const row = group === null ? period + 3.2 : period;
  return { left: column * 60, right: column * 60 + 57, top: row * 60, bottom: row * 60 + 56 };
});
const to = (from: string, direction: Direction) =>
  all[
    walk(
      places,
      all.findIndex(({ symbol }) => symbol === from),
      direction,
    )
  ]?.symbol;

test.each<[string, Direction, string | undefined]>([
  ['Fe', 'ArrowRight', 'Co'],
  ['Fe', 'ArrowLeft', 'Mn'],
  ['Fe', 'ArrowDown', 'Ru'],
  ['Fe', 'ArrowUp', undefined],
  ['H', 'ArrowRight', 'He'],
  ['Be', 'ArrowRight', 'B'],
  ['B', 'ArrowLeft', 'Be'],
  ['Ba', 'ArrowRight', 'Hf'],
  ['Rf', 'ArrowDown', 'La'],
  ['La', 'ArrowDown', 'Ac'],
  ['Ne', 'ArrowRight', undefined],
])('from %s, %s leads to %s', (from, direction, symbol) => {
  expect(to(from, direction)).toBe(symbol);
});

test('every card can be reached by arrows from iron', () => {
  const seen = new Set([all.findIndex(({ symbol }) => symbol === 'Fe')]);
  for (const index of seen) {
    for (const direction of ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'] as const) {
      const next = walk(places, index, direction);
      if (next >= 0) seen.add(next);
    }
  }
  expect(seen.size).toBe(118);
});
