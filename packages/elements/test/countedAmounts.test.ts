import { expect, test } from 'vitest';
import { countedAmounts } from '../src/index.ts';

test('amounts add up, a bracket as one', () => {
  expect(countedAmounts('(CoCrFeNi)94Al6').total).toBe(100);
  expect(countedAmounts('(CoCrFe)Ni2').total).toBe(5);
  expect(countedAmounts('CoNi')).toMatchObject({ total: 2, written: false });
  expect(countedAmounts('(Co2Fe)Ni').written).toBe(true);
});

test('what has no amount is told with what it counts and the largest amount beside it', () => {
  expect(countedAmounts('Fe70Mn').withoutAmount).toEqual([{ what: 'Mn', counted: 1, beside: 70 }]);
  expect(countedAmounts('(CoNi)Fe70').withoutAmount[0]).toEqual({ what: '(CoNi)', counted: 2, beside: 70 });
  // Shares of a bracket stand beside each other, not beside its amount.
  expect(countedAmounts('(CoNi)30Fe70').withoutAmount.every(({ beside }) => beside === 0)).toBe(true);
});

test('the amount of a bracket is told apart where it could be meant for each part', () => {
  expect(countedAmounts('(FeCo)2Ni').shared).toEqual([{ what: '(FeCo)', amount: 2 }]);
  for (const text of ['(FeCo)50Ni50', '(FeCo)0.5Ni0.5', '(Fe0.5Co0.5)2Ni', '(FeCo)2', '(FeCo)Ni']) {
    expect(countedAmounts(text).shared, text).toEqual([]);
  }
});
