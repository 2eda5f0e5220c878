import type { ShortlistChange } from '@tiegel/contract';
import { expect, test } from 'vitest';
import { openStore } from '../../src/index.ts';
import { columns, freshFile, openTestStore } from '../fixtures/files.ts';

const change = (key: string, name: string): ShortlistChange => ({
  ...{ key, by: 'Ana', seen: 0 },
  act: { kind: 'rename', name },
});

test('changes are numbered in the order of taking, each key once, and survive a restart', () => {
  const file = freshFile();
  const first = openStore({ file, columns });
  const { id } = first.shortlists.create('2027-01-14T08:00:00Z');
  const other = first.shortlists.create('2027-01-14T08:00:01Z');
  first.shortlists.take(id, [change('a', 'One'), change('b', 'Two')], '2027-01-14T08:01:00Z');
  first.shortlists.take(id, [change('b', 'Two'), change('c', 'Three')], '2027-01-14T08:02:00Z');
  first.shortlists.take(other.id, [change('a', 'Other')], '2027-01-14T08:02:00Z');
  first.close();
  const { shortlists } = openTestStore(file);
  expect(shortlists.list().map((one) => one.id)).toEqual([other.id, id]);
  expect(shortlists.find('none')).toBeNull();
  expect(shortlists.changes(id).map(({ sequence, key, at }) => [sequence, key, at])).toEqual([
    [1, 'a', '2027-01-14T08:01:00Z'],
    [2, 'b', '2027-01-14T08:01:00Z'],
    [3, 'c', '2027-01-14T08:02:00Z'],
  ]);
  expect(shortlists.changes(other.id).map(({ sequence }) => sequence)).toEqual([1]);
});

test('a list begins with its first changes, or not at all', () => {
  const { shortlists } = openTestStore(freshFile());
  const at = '2027-01-14T08:00:00Z';
  const { id } = shortlists.create(at, [change('name', 'Castings')]);
  expect(shortlists.changes(id)).toEqual([{ ...change('name', 'Castings'), sequence: 1, at }]);
  const refused = { ...change('name', 'Castings'), key: null } as unknown as ShortlistChange;
  expect(() => shortlists.create(at, [refused])).toThrow(/NOT NULL/);
  expect(shortlists.list().map((one) => one.id)).toEqual([id]);
});
