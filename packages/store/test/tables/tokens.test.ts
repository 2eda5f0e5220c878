import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openStore } from '../../src/index.ts';
import { columns, freshFile, openTestStore } from '../fixtures/files.ts';

const at = '2027-01-14T08:00:00Z';

test('a token is its holder until it is withdrawn, after a restart too, and nothing else is', () => {
  const file = freshFile();
  const first = openStore({ file, columns });
  const token = first.tokens.give('Ana', 'author', at)!;
  expect(first.tokens.holderOf(token)).toEqual({ name: 'Ana', role: 'author' });
  first.close();
  const { tokens } = openTestStore(file);
  expect(tokens.holderOf(token)).toEqual({ name: 'Ana', role: 'author' });
  for (const other of ['', 'Ana', token.slice(0, -1), `${token}A`, token.toUpperCase()])
    expect(tokens.holderOf(other)).toBeNull();
  expect(tokens.withdraw('Ana', at)).toBe(true);
  expect(tokens.holderOf(token)).toBeNull();
  expect(tokens.withdraw('Ana', at)).toBe(false);
});

test('a name has one token in force, and another one once that is withdrawn', () => {
  const { tokens } = openTestStore();
  const first = tokens.give('Ana', 'reader', at)!;
  expect(tokens.give('Ana', 'keeper', at)).toBeNull();
  expect(tokens.holderOf(first)).toEqual({ name: 'Ana', role: 'reader' });
  tokens.withdraw('Ana', '2027-01-15T08:00:00Z');
  const second = tokens.give('Ana', 'keeper', at)!;
  expect(second).not.toBe(first);
  expect(tokens.list()).toEqual([
    { name: 'Ana', role: 'keeper', givenAt: at, withdrawnAt: null },
    { name: 'Ana', role: 'reader', givenAt: at, withdrawnAt: '2027-01-15T08:00:00Z' },
  ]);
});

test('the files of a database hold no token', () => {
  const file = freshFile();
  const store = openStore({ file, columns });
  const token = store.tokens.give('Ana', 'keeper', at)!;
  // 32 random bytes, which base64url writes as 43 characters.
  expect(token).toMatch(/^tiegel_[\w-]{43}$/);
  for (const name of [file, `${file}-wal`]) {
    const content = readFileSync(name, 'latin1');
    expect(content.includes(token.slice('tiegel_'.length))).toBe(false);
  }
  expect(readFileSync(`${file}-wal`, 'latin1')).toContain('Ana');
  store.close();
});
