import { expect, test } from 'vitest';
import { selectingInWords } from '../../../src/look/candidates/selectingInWords.ts';
import { readView } from '../../../src/look/viewState.ts';

const name = (id: string) => `the ${id}`;
const told = (asked: string, before: string | null) =>
  selectingInWords(readView(asked), before === null ? null : readView(before), 1_000_000, name);

test('what is being done is told by what differs from the rows that are shown', () => {
  expect(told('order=cost&direction=desc', '')).toMatch(
    /^Putting 1\D000\D000 rows in order by the cost, highest first$/,
  );
  expect(told('order=cost', 'order=cost&direction=desc')).toMatch(/by the cost, lowest first$/);
  expect(told('order=cost', null)).toMatch(/by the cost, lowest first$/);
  expect(told('order=cost&max.density=7', 'order=cost')).toBe('Finding the rows that meet the filters');
  expect(told('order=cost&at=899999', 'order=cost')).toMatch(/^Going to row 900\D000$/);
  expect(told('', null)).toBe('Fetching the candidates');
  expect(told('', 'order=cost')).toBe('Fetching the candidates');
});
