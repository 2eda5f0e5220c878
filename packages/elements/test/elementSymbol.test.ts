import { describe, expect, test } from 'vitest';
import { nearestSymbols, requireElements } from '../src/index.ts';
import { faultsFrom } from './faultsFrom.ts';

describe('the nearest symbol', () => {
  const slips: [string, string[]][] = [
    ['AL', ['Al']],
    ['ni', ['Ni']],
    ['iN', ['In']],
    ['eF', ['Fe']],
    ['Tungsten', ['W']],
    ['iron', ['Fe']],
    ['Aluminum', ['Al']],
    ['Fx', ['Fe']],
  ];
  test.for(slips)('of %s', ([typed, expected]) => {
    expect(nearestSymbols(typed)).toEqual(expected);
  });

  test('is none where no symbol is one letter away, and at most three', () => {
    for (const typed of ['', 'Xx', 'Q', 'zzzzzz', '💥', 'A'.repeat(10_000)]) {
      expect(nearestSymbols(typed)).toEqual([]);
    }
    for (const typed of ['Cx', 'Ax', 'Sx', 'Xe']) expect(nearestSymbols(typed).length).toBeLessThanOrEqual(3);
    expect(faultsFrom(() => requireElements(['Xx']))[0]!.remedy).toBe(
      'Write the symbol of an element, such as Fe.',
    );
  });
});

test('an element of the periodic table without data is told apart from no element', () => {
  const faults = faultsFrom(() => requireElements(['Hg', 'Fe', 'Fx'], '/elements/pool'));
  expect(faults).toEqual([
    {
      code: 'element/no-data',
      pointer: '/elements/pool/0',
      detail: 'There are no data of Hg (mercury).',
      remedy: 'Use the elements that the page Data shows, and "data elements" and GET /api/v1/elements list.',
    },
    {
      code: 'element/unknown',
      pointer: '/elements/pool/2',
      detail: '"Fx" is not the symbol of an element.',
      remedy: 'Write the symbol of an element; the nearest known: Fe.',
    },
  ]);
});
