import { expect, test } from 'vitest';
import { openStore } from '../../src/index.ts';
import { columns, freshFile, openTestStore } from '../fixtures/files.ts';

const at = '2027-01-14T08:00:00Z';
const later = '2027-01-15T08:00:00Z';

test('a melt is changed version by version, and every version is kept', () => {
  const file = freshFile();
  const first = openStore({ file, columns });
  const made = first.melts.create({ hardness: null }, at);
  expect(made).toMatchObject({ version: 1, createdAt: at, deletedAt: null, entry: { hardness: null } });
  expect(first.melts.change(made.id, 1, { hardness: 200 }, later, 'Ana')).toMatchObject({
    version: 2,
    changedAt: later,
  });
  first.close();
  const { melts } = openTestStore(file);
  expect(melts.history(made.id)).toEqual([
    { version: 2, at: later, by: 'Ana', entry: { hardness: 200 } },
    { version: 1, at, by: null, entry: { hardness: null } },
  ]);
  expect(melts.find(made.id)?.entry).toEqual({ hardness: 200 });
});

test('a change of an older version changes nothing', () => {
  const { melts } = openTestStore();
  const { id } = melts.create({ hardness: null }, at);
  melts.change(id, 1, { hardness: 200 }, later);
  expect(melts.change(id, 1, { hardness: 300 }, later)).toBeNull();
  expect(melts.find(id)).toMatchObject({ version: 2, entry: { hardness: 200 } });
  expect(melts.history(id)).toHaveLength(2);
  expect(melts.change('nobody', 1, {}, at)).toBeNull();
});

test('a deleted melt leaves the list, is still found, and comes back', () => {
  const { melts } = openTestStore();
  const one = melts.create({ name: 'one' }, at);
  const two = melts.create({ name: 'two' }, at);
  expect(melts.list().map(({ id }) => id)).toEqual([two.id, one.id]);
  melts.setDeleted(two.id, later);
  expect(melts.list().map(({ id }) => id)).toEqual([one.id]);
  expect(melts.find(two.id)?.deletedAt).toBe(later);
  melts.setDeleted(two.id, null);
  expect(melts.list()).toHaveLength(2);
});

test('the same key records once', () => {
  const { melts } = openTestStore();
  const made = melts.create({ name: 'one' }, at, 'a key');
  expect(melts.create({ name: 'one' }, later, 'a key')).toEqual(made);
});

test('attachments belong to their melt, and one that was taken away comes back', () => {
  const { melts } = openTestStore();
  const { id } = melts.create({}, at);
  melts.attach(id, { id: 'f1', name: 'etched.png', type: 'image/png', size: 10 }, at, 3);
  melts.attach(id, { id: 'f2', name: 'scan.xy', type: 'text/plain', size: 20 }, later, 3);
  expect(melts.attachments(id)).toEqual([
    { id: 'f1', name: 'etched.png', type: 'image/png', size: 10, addedAt: at },
    { id: 'f2', name: 'scan.xy', type: 'text/plain', size: 20, addedAt: later },
  ]);
  melts.remove('another', 'f1', later);
  expect(melts.attachments(id)).toHaveLength(2);
  melts.remove(id, 'f1', later);
  expect(melts.attachments(id).map((one) => one.id)).toEqual(['f2']);
  expect(['f1', 'f2', 'f9'].map((one) => melts.hadAttachment(id, one))).toEqual([true, true, false]);
  expect(melts.hadAttachment('another', 'f1')).toBe(false);
  expect(melts.restore(id, 'f1', 3)).toBe(true);
  expect(melts.restore(id, 'f1', 2)).toBe(true);
  expect(melts.attachments(id)).toHaveLength(2);
  const one = { id: 'f3', name: 'x', type: 'text/plain', size: 1 };
  expect(() => melts.attach('nobody', one, at, 3)).toThrow();
});

test('no more than so many attachments are added or brought back', () => {
  const { melts } = openTestStore();
  const [full, other] = [melts.create({}, at).id, melts.create({}, at).id];
  const attach = (melt: string, id: string) =>
    melts.attach(melt, { id, name: 'scan.xy', type: 'text/plain', size: 20 }, at, 2);
  expect(['f1', 'f2', 'f3'].map((id) => attach(full, id))).toEqual([true, true, false]);
  expect(attach(other, 'f4')).toBe(true);
  melts.remove(full, 'f1', later);
  expect(attach(full, 'f5')).toBe(true);
  expect(melts.restore(full, 'f1', 2)).toBe(false);
  expect(melts.attachments(full).map(({ id }) => id)).toEqual(['f2', 'f5']);
});
