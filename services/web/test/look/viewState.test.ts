import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countFilters } from '../../src/look/filters/filters.ts';
import { readView, selectionOf, type ViewState, writeView } from '../../src/look/viewState.ts';

const plot = { x: null, y: null, colour: null, published: 'pool', brush: null } as const;
const usual: ViewState = {
  show: 'table',
  filters: { ranges: [], has: [], without: [] },
  order: 'rank',
  direction: 'asc',
  columns: null,
  at: 0,
  plot: { ...plot, wishes: [null, null], scales: [null, null] },
  beside: null,
};
const finite = fc.double({ noNaN: true, noDefaultInfinity: true }).filter((value) => !Object.is(value, -0));
const range = fc.record({ quantity: fc.constantFrom('density', 'omega', 'cost'), min: finite, max: finite });
const wish = fc.option(fc.constantFrom('low' as const, 'high' as const, 'none' as const));
const scale = fc.option(fc.constantFrom('log' as const, 'linear' as const));
const ends = fc.tuple(finite, finite).map(([a, b]): [number, number] => (a <= b ? [a, b] : [b, a]));
const view = fc.record({
  filters: fc.record({
    ranges: fc.uniqueArray(range, { selector: ({ quantity }) => quantity, maxLength: 3 }),
    has: fc.subarray(['Al', 'Fe', 'V']),
    without: fc.subarray(['Co', 'Ni']),
  }),
  order: fc.constantFrom('rank', 'density'),
  direction: fc.constantFrom('asc' as const, 'desc' as const),
  columns: fc.option(fc.subarray(['density', 'omega'], { minLength: 1 })),
  at: fc.nat(),
  beside: fc.option(fc.constantFrom('cost', 'omega')),
  show: fc.constantFrom('table' as const, 'scatter' as const, 'unexplored' as const),
  plot: fc.record({
    x: fc.option(fc.constantFrom('density', 'omega')),
    y: fc.option(fc.constantFrom('density', 'omega')),
    colour: fc.option(fc.constantFrom('cost', 'none')),
    published: fc.constantFrom('pool' as const, 'all' as const, 'none' as const),
    wishes: fc.tuple(wish, wish),
    scales: fc.tuple(scale, scale),
    brush: fc.option(fc.record({ x: ends, y: ends })),
  }),
});

test('the address holds the whole view', () => {
  fc.assert(
    fc.property(view, (state) => {
      expect(readView(writeView(state))).toEqual(state);
    }),
  );
});

test('the usual view has a bare address', () => {
  expect(writeView(usual)).toBe('');
  expect(readView('')).toEqual(usual);
});

test('an address that somebody spoilt shows the usual view', () => {
  expect(
    readView('?at=-3&direction=up&min.density=lots&has=fe,<b>,Fe&view=map&brush=1,,3,4&better=up,'),
  ).toEqual({
    ...usual,
    filters: { ranges: [], has: ['Fe'], without: [] },
  });
});

test('a filter on the Pareto front is one more filter, and asks for it as the API does', () => {
  const { filters } = readView('?front=yes&has=Fe');
  expect(filters).toEqual({ ranges: [], has: ['Fe'], without: [], front: true });
  expect(countFilters(filters)).toBe(2);
  expect(selectionOf({ ...usual, filters }).get('front')).toBe('yes');
  expect(readView('?front=perhaps').filters.front).toBeUndefined();
});

test('a selection is written as the API takes it', () => {
  const filters = { ranges: [{ quantity: 'density', max: 7.5 }], has: ['Fe', 'Ni'], without: ['Co'] };
  expect(selectionOf({ ...usual, filters, order: 'cost', direction: 'desc' }).toString()).toBe(
    'max.density=7.5&has=Fe%2CNi&without=Co&order=cost&direction=desc',
  );
});
