import { expect, test } from 'vitest';
import { pruningTurns } from '../../src/pruning/pruningTurns.ts';

const endless = Number.POSITIVE_INFINITY;

test('what was quicker is asked nothing more, until it takes longer than the kernel', () => {
  const turns = pruningTurns();
  expect(turns.mostMs(200)).toBe(200);
  turns.took(150, 200);
  expect(turns.mostMs(200)).toBe(endless);
  turns.took(230, 200);
  expect(turns.mostMs(200)).toBe(endless);
  turns.took(300, 200);
  expect(turns.mostMs(200)).toBe(200);
});

test('the first time is for the compiler, and decides nothing where it was slower', () => {
  const turns = pruningTurns();
  expect(turns.mostMs(5)).toBeGreaterThan(20);
  turns.took(20, 5);
  expect(turns.mostMs(5)).toBe(5);
});

test('what gave up is tried again, after one chunk and then more and more, but never too many', () => {
  const turns = pruningTurns();
  const rests: number[] = [];
  for (let trial = 0; trial < 8; trial += 1) {
    let rest = 0;
    while (turns.mostMs(100) === 0) rest += 1;
    rests.push(rest);
    turns.gaveUp();
  }
  expect(rests).toEqual([0, 1, 2, 4, 8, 16, 32, 32]);
});

test('a slow minute at first does not decide the whole search', () => {
  const turns = pruningTurns();
  turns.mostMs(100);
  turns.gaveUp();
  expect(turns.mostMs(100)).toBe(0);
  expect(turns.mostMs(100)).toBe(100);
  turns.took(10, 100);
  expect(turns.mostMs(100)).toBe(endless);
});
