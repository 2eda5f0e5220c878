import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type ShortlistAct, shortlistOf, shortlistStatuses, type TakenChange } from '../../src/index.ts';

const start = { id: 'k3v9x2', createdAt: '2027-01-14T08:00:00Z' };
const alloy = 'Co50Ni50';

/** Changes in the order of taking: who, what they had seen, what they did. */
function taken(...rows: [by: string, seen: number, act: ShortlistAct][]): TakenChange[] {
  return rows.map(([by, seen, act], at) => ({
    ...{ key: `k${at}`, by, seen, act, sequence: at + 1 },
    at: `2027-01-14T08:0${at % 10}:00Z`,
  }));
}
const add: ShortlistAct = { kind: 'add', entry: alloy };
const status = (to: (typeof shortlistStatuses)[number]): ShortlistAct => ({
  kind: 'status',
  entry: alloy,
  status: to,
});
const note = (text: string): ShortlistAct => ({ kind: 'note', entry: alloy, text });

test('a list is named, filled, noted on and judged; who did it and when stands by it', () => {
  const list = shortlistOf(
    start,
    taken(
      ['Ana', 0, { kind: 'rename', name: 'Impeller' }],
      ['Ana', 1, { kind: 'add', entry: alloy, search: 's1' }],
      ['Ben', 2, note('Ask for 50 g.')],
      ['Ben', 3, status('agreed')],
    ),
  );
  expect(list).toMatchObject({
    id: 'k3v9x2',
    sequence: 4,
    name: { value: 'Impeller', by: 'Ana', rivals: [] },
  });
  expect(list.entries).toMatchObject([
    {
      ...{ entry: alloy, search: 's1', addedBy: 'Ana', addedAt: '2027-01-14T08:01:00Z' },
      status: { value: 'agreed', by: 'Ben', rivals: [] },
      notes: [{ text: 'Ask for 50 g.', by: 'Ben' }],
    },
  ]);
});

test('where two set the same thing without knowing of each other, both values stand until one who saw both decides', () => {
  const changes: [string, number, ShortlistAct][] = [
    ['Ana', 0, add],
    ['Ana', 1, status('to melt')],
    ['Ben', 1, status('set aside')],
  ];
  const [conflict] = shortlistOf(start, taken(...changes)).entries;
  expect(conflict!.status).toMatchObject({
    ...{ value: 'set aside', by: 'Ben' },
    rivals: [{ value: 'to melt', by: 'Ana' }],
  });
  const [decided] = shortlistOf(start, taken(...changes, ['Ana', 3, status('to melt')])).entries;
  expect(decided!.status).toMatchObject({ value: 'to melt', by: 'Ana', rivals: [] });
});

test('the same value set by two is no conflict, nor is what one person sets twice', () => {
  const [same] = shortlistOf(
    start,
    taken(['Ana', 0, add], ['Ana', 1, status('agreed')], ['Ben', 1, status('agreed')]),
  ).entries;
  expect(same!.status.rivals).toEqual([]);
  const [own] = shortlistOf(
    start,
    taken(['Ana', 0, add], ['Ana', 1, status('agreed')], ['Ana', 1, status('to melt')]),
  ).entries;
  expect(own!.status).toMatchObject({ value: 'to melt', rivals: [] });
});

test('an alloy that two add is one entry, and notes of both stay', () => {
  const { entries } = shortlistOf(
    start,
    taken(['Ana', 0, add], ['Ben', 0, add], ['Ben', 0, note('Mine.')], ['Ana', 0, note('Mine too.')]),
  );
  expect(entries).toHaveLength(1);
  expect(entries[0]!.notes.map(({ text }) => text)).toEqual(['Mine.', 'Mine too.']);
});

test('who writes on an entry that another removes meanwhile keeps it in sight, whoever comes first', () => {
  const remove: ShortlistAct = { kind: 'remove', entry: alloy };
  for (const rows of [
    [
      ['Ana', 1, remove],
      ['Ben', 1, note('Promising.')],
    ],
    [
      ['Ben', 1, note('Promising.')],
      ['Ana', 1, remove],
    ],
  ] as [string, number, ShortlistAct][][]) {
    const [entry] = shortlistOf(start, taken(['Ana', 0, add], ...rows)).entries;
    expect(entry!.removed).toMatchObject({ value: false, rivals: [{ value: true, by: 'Ana' }] });
    expect(entry!.notes).toHaveLength(1);
    const [kept] = shortlistOf(
      start,
      taken(['Ana', 0, add], ...rows, ['Ben', 3, { kind: 'restore', entry: alloy }]),
    ).entries;
    expect(kept!.removed).toMatchObject({ value: false, by: 'Ben', rivals: [] });
    // Adding it once more decides nothing: whoever adds need not have seen that anybody took it off.
    const [added] = shortlistOf(start, taken(['Ana', 0, add], ...rows, ['Ben', 3, add])).entries;
    expect(added!.removed.rivals).toHaveLength(1);
    const [gone] = shortlistOf(start, taken(['Ana', 0, add], ...rows, ['Ben', 3, remove])).entries;
    expect(gone!.removed).toMatchObject({ value: true, by: 'Ben', rivals: [] });
  }
});

test('what was removed can be brought back, with its notes', () => {
  const [entry] = shortlistOf(
    start,
    taken(
      ['Ana', 0, add],
      ['Ana', 1, note('Ductile.')],
      ['Ben', 2, { kind: 'remove', entry: alloy }],
      ['Ben', 3, { kind: 'restore', entry: alloy }],
    ),
  ).entries;
  expect(entry).toMatchObject({ removed: { value: false, rivals: [] }, notes: [{ text: 'Ductile.' }] });
});

test('whatever people do in whatever order, no note is lost and no entry disappears', () => {
  const entry = fc.constantFrom('Co50Ni50', 'Cr50Fe50');
  const act: fc.Arbitrary<ShortlistAct> = fc.oneof(
    fc.record({ kind: fc.constant('note' as const), entry, text: fc.string({ minLength: 1 }) }),
    fc.record({ kind: fc.constant('status' as const), entry, status: fc.constantFrom(...shortlistStatuses) }),
    fc.record({ kind: fc.constantFrom('remove' as const, 'restore' as const, 'add' as const), entry }),
  );
  const rows = fc.array(fc.tuple(fc.constantFrom('Ana', 'Ben', 'Cy'), fc.nat(30), act), {
    maxLength: 30,
    size: 'max',
  });
  fc.assert(
    fc.property(rows, (changes) => {
      const all = taken(
        ['Ana', 0, { kind: 'add', entry: 'Co50Ni50' }],
        ['Ana', 0, { kind: 'add', entry: 'Cr50Fe50' }],
        ...changes,
      );
      const { entries, sequence } = shortlistOf(start, all);
      expect(entries.map((one) => one.entry)).toEqual(['Co50Ni50', 'Cr50Fe50']);
      expect(sequence).toBe(all.length);
      const written = all.flatMap(({ act: { kind, ...rest } }) => (kind === 'note' ? [rest] : []));
      const kept = entries.flatMap(({ entry: of, notes }) => notes.map(({ text }) => `${of} ${text}`));
      expect(kept.sort()).toEqual(
        written.map((one) => `${Reflect.get(one, 'entry')} ${Reflect.get(one, 'text')}`).sort(),
      );
      // The last status that somebody set holds.
      for (const one of entries) {
        const last = all.findLast(
          ({ act: { kind, ...rest } }) => kind === 'status' && Reflect.get(rest, 'entry') === one.entry,
        );
        const expected = last === undefined ? 'proposed' : Reflect.get(last.act, 'status');
        expect(one.status.value).toBe(expected);
      }
    }),
  );
});
