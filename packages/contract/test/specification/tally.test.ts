import { expect, test } from 'vitest';
import { type ProblemError, questionOf, searchSpecificationFor, tallies } from '../../src/index.ts';

const specifications = searchSpecificationFor({ quantities: [{ id: 'density' }], elements: ['Al', 'Ni'] });

function request(more: object = {}): object {
  return {
    elements: { pool: ['Al', 'Ni'] },
    components: 2,
    fractions: { step: 5 },
    rank: [{ quantity: 'density', prefer: 'low' }],
    ...more,
  };
}

const asked = (more: object = {}) => specifications.check(request(more)).specification;
const words = (more: object) => questionOf(asked(more), () => ({ name: 'Density', unit: 'g/cm3' }));

test('each limit is counted unless something else is asked for', () => {
  expect(asked().tally).toBe('each');
  for (const tally of tallies) expect(asked({ tally }).tally).toBe(tally);
});

test('another tally is refused, and what would be right is said', () => {
  try {
    asked({ tally: 'some' });
    expect.unreachable();
  } catch (error) {
    const [fault] = (error as ProblemError).faults;
    expect(fault).toMatchObject({ code: 'request/wrong-value', pointer: '/tally' });
    expect(fault!.remedy).toContain('"none"');
  }
});

test('the question says what is not counted, and nothing of the usual tally', () => {
  expect(words({})).toMatch(/lowest density$/);
  expect(words({ tally: 'all' })).toMatch(/lowest density, passes counted of all limits together$/);
  expect(words({ tally: 'none' })).toMatch(/lowest density, passes not counted$/);
});
