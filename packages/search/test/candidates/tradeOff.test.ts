import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tradeOff } from '../../src/candidates/tradeOff.ts';

type Pair = [number | null, number | null];
const values = fc.option(fc.integer({ min: 0, max: 12 }), { freq: 8 });
const pairs = fc.array(fc.tuple(values, values), { maxLength: 60, size: 'max' });
const wishes = fc.tuple(
  fc.constantFrom('low' as const, 'high' as const),
  fc.constantFrom('low' as const, 'high' as const),
);

/** The definition, point against point: nobody is at least as good in both and better in one. */
function byDefinition(all: Pair[], [one, other]: ['low' | 'high', 'low' | 'high']) {
  const better = (wish: string, a: number, b: number) => (wish === 'low' ? a < b : a > b);
  const whole = all.flatMap(([a, b], place) => (a === null || b === null ? [] : [{ a, b, rank: place + 1 }]));
  const front = whole.filter(
    ({ a, b }) =>
      !whole.some(
        (by) =>
          !better(one, a, by.a) &&
          !better(other, b, by.b) &&
          (better(one, by.a, a) || better(other, by.b, b)),
      ),
  );
  const distinct = new Map<string, { values: [number, number]; rank: number; alike: number }>();
  for (const { a, b, rank } of front) {
    const known = distinct.get(`${a} ${b}`);
    if (known) known.alike += 1;
    else distinct.set(`${a} ${b}`, { values: [a, b], rank, alike: 1 });
  }
  return [...distinct.values()].sort((p, q) => (better(one, p.values[0], q.values[0]) ? -1 : 1));
}

test('the front is what the definition gives, point against point', () => {
  fc.assert(
    fc.property(pairs, wishes, (all, prefer) => {
      const front = tradeOff(prefer);
      for (const [place, [a, b]] of all.entries()) front.add(a, b, place + 1);
      expect(front.points()).toEqual(byDefinition(all, prefer));
    }),
  );
});

test('a single candidate is the front, one without a value is none', () => {
  const front = tradeOff(['low', 'high']);
  front.add(null, 3, 1);
  expect(front.points()).toEqual([]);
  front.add(2, 3, 2);
  expect(front.points()).toEqual([{ values: [2, 3], rank: 2, alike: 1 }]);
});
