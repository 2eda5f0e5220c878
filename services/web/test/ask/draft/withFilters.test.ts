import { expect, test } from 'vitest';
import { emptyDraft, limitRow } from '../../../src/ask/draft/draft.ts';
import { withFilters } from '../../../src/ask/draft/withFilters.ts';

test('filters become limits, beside those that stand, and required and forbidden elements', () => {
  const draft = {
    ...emptyDraft,
    marks: { Al: 'pool', Fe: 'pool', Ni: 'require' } as const,
    limits: [limitRow('density', { min: '6', max: '8' }), limitRow('omega', { min: '1' })],
  };
  const filters = {
    ranges: [
      { quantity: 'density', max: 7 },
      { quantity: 'cost', min: 2, max: 9 },
    ],
    has: ['Fe'],
    without: ['Al'],
  };
  const { limits, marks } = withFilters(draft, filters);
  expect(limits.map(({ quantity, min, max }) => [quantity, min, max])).toEqual([
    ['density', '6', '7'],
    ['omega', '1', ''],
    ['cost', '2', '9'],
  ]);
  expect(marks).toEqual({ Al: 'forbid', Fe: 'require', Ni: 'require' });
});
