import { expect, test } from 'vitest';
import { alloyQuestion } from '../../../src/alloy/entry/alloyQuestion.ts';

// 100 * 70 / 71 = 98.59.
test('a forgotten amount beside per cent is asked for, a ratio is not', () => {
  expect(alloyQuestion('Fe70Mn')).toBe('Mn has no amount: counted as 1 beside 70; Fe98.59 Mn1.41.');
  for (const text of ['Al0.5CoCrFeNi', 'CoCrFeMnNi', 'Fe9Mn', '(CoCrFeNi)94Al6', 'Fe70Mn30']) {
    expect(alloyQuestion(text), text).toBe('');
  }
});

test('the amount of a bracket is explained where it could be meant for each part', () => {
  expect(alloyQuestion('(FeCo)2Ni2')).toBe('(FeCo)2 counts 2 in all, not 2 of each; Co25 Fe25 Ni50.');
});
