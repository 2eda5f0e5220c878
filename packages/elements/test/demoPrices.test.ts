import { expect, test } from 'vitest';
import { demoPrices, elements, readPriceList } from '../src/index.ts';

test('the demonstration list says in every entry that it is invented', () => {
  expect(demoPrices.invented).toBe(true);
  for (const { source, date } of Object.values(demoPrices.prices)) {
    expect(source).toBe('invented for demonstration');
    expect(date).toBe(demoPrices.date);
  }
});

test('it prices every element with a round number', () => {
  expect(Object.keys(demoPrices.prices)).toEqual(elements.map(({ symbol }) => symbol));
  for (const [symbol, { pricePerKilogram }] of Object.entries(demoPrices.prices)) {
    expect(Number(pricePerKilogram.toPrecision(2)), symbol).toBe(pricePerKilogram);
  }
});

test('it would be read as a list of its own', () => {
  const rows = Object.entries(demoPrices.prices).map(([symbol, { pricePerKilogram, date, source }]) =>
    [symbol, pricePerKilogram, demoPrices.currency, date, source].join(),
  );
  const read = readPriceList(['symbol,pricePerKilogram,currency,date,source', ...rows].join('\n'));
  expect(read).toEqual({ ...demoPrices, invented: false });
});
