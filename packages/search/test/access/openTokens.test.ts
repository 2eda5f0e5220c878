import { ProblemError } from '@tiegel/contract/terms';
import { openStore } from '@tiegel/store';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { openTokens, type Tokens } from '../../src/laboratory.ts';

const store = openStore({ file: null, columns: [] });
afterAll(() => store.close());
let tokens: Tokens;
beforeEach(() => {
  tokens = openTokens(store.tokens);
});

function codeOf(act: () => unknown): string | undefined {
  try {
    act();
  } catch (error) {
    if (error instanceof ProblemError) return error.faults[0]!.code;
    throw error;
  }
  return undefined;
}

test('a name is one however it is typed: blanks around it, composed or not', () => {
  const { name, token } = tokens.give('  Zoe\u0308 ', 'author');
  expect(name).toBe('Zo\u00eb');
  expect(tokens.holderOf(token)).toEqual({ name: 'Zo\u00eb', role: 'author' });
  expect(codeOf(() => tokens.give('Zo\u00eb', 'reader'))).toBe('access/holder-known');
  tokens.withdraw('Zoe\u0308');
  expect(tokens.holderOf(token)).toBeNull();
  expect(codeOf(() => tokens.withdraw('Zo\u00eb'))).toBe('access/holder-unknown');
});

test.each(['', '  ', 'a\nb', 'a\u200bb', 'a\u202eb', 'x'.repeat(61)])(
  'the name %j is refused: nobody could read it in a list',
  (name) => {
    expect(codeOf(() => tokens.give(name, 'reader'))).toBe('access/holder-name');
  },
);

test('a role that this release does not know may only read', () => {
  const token = store.tokens.give('From a later release', 'director', '2027-01-14T08:00:00Z')!;
  expect(tokens.holderOf(token)?.role).toBe('reader');
});
