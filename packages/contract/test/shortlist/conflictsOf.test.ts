import { expect, test } from 'vitest';
import {
  conflictsOf,
  ProblemError,
  type ShortlistAct,
  settlingAct,
  shortlistOf,
  type TakenChange,
} from '../../src/index.ts';

const start = { id: 'k3v9x2', createdAt: '2027-01-14T08:00:00Z' };
const alloy = 'Co50Ni50';
type Row = [by: string, seen: number, act: ShortlistAct];

const listOf = (...rows: Row[]) =>
  shortlistOf(
    start,
    rows.map(([by, seen, act], at): TakenChange => {
      return { key: `k${at}`, by, seen, act, sequence: at + 1, at: `2027-01-14T08:0${at}:00Z` };
    }),
  );
const add: Row = ['Ana', 0, { kind: 'add', entry: alloy }];
const remove: Row = ['Ana', 1, { kind: 'remove', entry: alloy }];
const note: Row = ['Ben', 1, { kind: 'note', entry: alloy, text: 'Promising.' }];
const status = (by: string, seen: number, to: 'to melt' | 'set aside'): Row => [
  ...([by, seen] as const),
  { kind: 'status', entry: alloy, status: to },
];
const contested = [add, status('Ana', 1, 'to melt'), status('Ben', 1, 'set aside')];

test('both versions of a status stand with who and when, first the one that holds', () => {
  expect(conflictsOf(listOf(...contested))).toEqual([
    {
      ...{ entry: alloy, about: 'status' },
      versions: [
        { value: 'set aside', by: 'Ben', at: '2027-01-14T08:02:00Z', holds: true },
        { value: 'to melt', by: 'Ana', at: '2027-01-14T08:01:00Z', holds: false },
      ],
    },
  ]);
  expect(conflictsOf(listOf(add))).toEqual([]);
  expect(conflictsOf(listOf(...contested, ['Cy', 3, { kind: 'remove', entry: alloy }]))).toEqual([]);
});

test('of a removal the other is who wrote on the entry, whoever came first', () => {
  for (const rows of [
    [remove, note],
    [note, remove],
  ]) {
    const [conflict] = conflictsOf(listOf(add, ...rows));
    expect(conflict).toMatchObject({
      about: 'removal',
      versions: [
        { value: 'stays', by: 'Ben', holds: true },
        { value: 'removed', by: 'Ana', holds: false },
      ],
    });
  }
});

test.each([
  ['to melt', contested],
  ['set aside', contested],
  ['stays', [add, note, remove]],
  ['removed', [add, note, remove]],
] as const)('whoever saw both and keeps "%s" settles it', (version, rows) => {
  const act = settlingAct(listOf(...rows), alloy, version);
  expect(conflictsOf(listOf(...rows, ['Cy', rows.length, act]))).toEqual([]);
});

test('what another changes meanwhile is a conflict again', () => {
  const act = settlingAct(listOf(...contested), alloy, 'to melt');
  const list = listOf(...contested, status('Di', 3, 'set aside'), ['Cy', 3, act]);
  expect(conflictsOf(list)[0]!.versions.map(({ by }) => by)).toEqual(['Cy', 'Di']);
});

test('no such entry, no conflict, and a version that nobody set are told apart', () => {
  const told = (act: () => unknown) => {
    try {
      act();
    } catch (error) {
      if (error instanceof ProblemError) return error.faults.map(({ code, remedy }) => [code, remedy]);
    }
    return [];
  };
  expect(told(() => settlingAct(listOf(add), 'Fe50Ni50', 'stays'))[0]![0]).toBe('shortlist/no-entry');
  expect(told(() => settlingAct(listOf(add), alloy, 'stays'))[0]![0]).toBe('shortlist/no-conflict');
  expect(told(() => settlingAct(listOf(...contested), alloy, 'agreed'))).toEqual([
    ['request/wrong-value', 'Keep one of: "set aside" (Ben), "to melt" (Ana).'],
  ]);
});
