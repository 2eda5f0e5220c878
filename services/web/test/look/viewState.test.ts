import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readView, selectionOf, type ViewState, writeView } from '../../src/look/viewState.ts';

const usual: ViewState = {
  filters: { ranges: [], has: [], without: [] },
  order: 'rank',
  direction: 'asc',
  columns: null,
  at: 0,
};
const finite = fc.double({ noNaN: true, noDefaultInfinity: true }).filter((value) => !Object.is(value, -0));
const range = fc.record({ quantity: fc.constantFrom('density', 'omega', 'cost'), min: finite, max: finite });
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
  expect(readView('?at=-3&direction=up&min.density=lots&has=fe,<b>,Fe')).toEqual({
    ...usual,
    filters: { ranges: [], has: ['Fe'], without: [] },
  });
});

test('a selection is written as the API takes it', () => {
  const filters = { ranges: [{ quantity: 'density', max: 7.5 }], has: ['Fe', 'Ni'], without: ['Co'] };
  expect(selectionOf({ ...usual, filters, order: 'cost', direction: 'desc' }).toString()).toBe(
    'max.density=7.5&has=Fe%2CNi&without=Co&order=cost&direction=desc',
  );
});
