import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPriceList } from '../src/index.ts';
import { codesFrom, faultsFrom } from './faultsFrom.ts';

const header = 'symbol,pricePerKilogram,currency,date,source';
const list = (...rows: string[]): string => [header, ...rows].join('\n');
const good = 'Al,2.50,EUR,2026-10-01,offer of a dealer';

describe('a price list', () => {
  test('is read with its newest date', () => {
    expect(readPriceList(list(good, 'Ni,20,EUR,2026-11-02,"offer, by telephone"'))).toEqual({
      currency: 'EUR',
      date: '2026-11-02',
      invented: false,
      prices: {
        Al: { pricePerKilogram: 2.5, date: '2026-10-01', source: 'offer of a dealer' },
        Ni: { pricePerKilogram: 20, date: '2026-11-02', source: 'offer, by telephone' },
      },
    });
  });

  test('may have its columns in any order, further ones, a byte order mark and Windows line ends', () => {
    const text =
      '\uFEFFnote,source,date,currency,pricePerKilogram,symbol\r\nx,offer,2026-10-01,CHF,1e3,Os\r\n';
    expect(readPriceList(text).prices.Os?.pricePerKilogram).toBe(1000);
    expect(readPriceList(text).currency).toBe('CHF');
  });
});

test.for([';', '\t'])('prices from a spreadsheet, parted by %j, may have decimal commas', (separator) => {
  const text = `${header}\nAl,2-50,EUR,2026-10-01,an offer\n`
    .replaceAll(',', separator)
    .replace('2-50', '2,50');
  expect(readPriceList(text).prices.Al?.pricePerKilogram).toBe(2.5);
});

describe('a price list is refused, each fault with its place', () => {
  const wrong: [string, string, string[]][] = [
    ['nothing', '', ['prices/empty']],
    ['a header alone', header, ['prices/empty']],
    [
      'thousands or decimals',
      `${header.replaceAll(',', ';')}\nAl;1,250;EUR;2026-10-01;x\nNi;1.250,5;EUR;2026-10-01;x`,
      ['prices/decimal-comma /rows/0/pricePerKilogram', 'prices/decimal-comma /rows/1/pricePerKilogram'],
    ],
    [
      'thousands or decimals, with a point',
      `${header.replaceAll(',', ';')}\nAl;1.250;EUR;2026-10-01;x\nNi;12,5;EUR;2026-10-01;x`,
      ['request/wrong-value /rows/0/pricePerKilogram'],
    ],
    ['an open quote', list('Al,2,EUR,2026-10-01,"x'), ['prices/unreadable']],
    ['two currencies', list(good, 'Ni,20,USD,2026-10-01,x'), ['prices/several-currencies /rows/1/currency']],
    ['a currency in words', list('Al,2,euro,2026-10-01,x'), ['prices/currency /rows/0/currency']],
    ['a negative price', list('Al,-2,EUR,2026-10-01,x'), ['prices/price /rows/0/pricePerKilogram']],
    ['a price of zero', list('Al,0.00,EUR,2026-10-01,x'), ['prices/price /rows/0/pricePerKilogram']],
    ['no price', list('Al,,EUR,2026-10-01,x'), ['prices/price /rows/0/pricePerKilogram']],
    ['an endless price', list('Al,1e999,EUR,2026-10-01,x'), ['prices/price /rows/0/pricePerKilogram']],
    ['a price in hexadecimal', list('Al,0x10,EUR,2026-10-01,x'), ['prices/price /rows/0/pricePerKilogram']],
    ['a price with its unit', list('Al,2 EUR,EUR,2026-10-01,x'), ['prices/price /rows/0/pricePerKilogram']],
    [
      'a quoted decimal comma',
      list('Al,"2,50",EUR,2026-10-01,x'),
      ['prices/decimal-comma /rows/0/pricePerKilogram'],
    ],
    ['a decimal comma', list('Al,2,50,EUR,2026-10-01,x'), ['prices/row-length /rows/0']],
    ['an unknown symbol', list('Xx,2,EUR,2026-10-01,x'), ['element/unknown /rows/0/symbol']],
    ['an element without data', list('U,2,EUR,2026-10-01,x'), ['element/no-data /rows/0/symbol']],
    ['an element twice', list(good, good), ['prices/repeated-element /rows/1/symbol']],
    ['a day that is none', list('Al,2,EUR,2026-02-30,x'), ['prices/date /rows/0/date']],
    ['a date of another form', list('Al,2,EUR,1.10.2026,x'), ['prices/date /rows/0/date']],
    ['no source', list('Al,2,EUR,2026-10-01,'), ['prices/source /rows/0/source']],
    ['an endless source', list(`Al,2,EUR,2026-10-01,${'x'.repeat(201)}`), ['prices/source /rows/0/source']],
    ['a misspelt column', list(good).replace('currency', 'curency'), ['prices/missing-column /header']],
    ['a column twice', `${header},date\n${good},2026-10-01`, ['prices/repeated-column /header']],
    ['too much text', 'x'.repeat(100_001), ['prices/too-large']],
    ['too many rows', list(...Array.from({ length: 501 }, () => good)), ['prices/too-large']],
  ];
  test.for(wrong)('%s', ([, text, codes]) => {
    expect(codesFrom(() => readPriceList(text))).toEqual(codes);
  });

  test('all faults at once, those of the rows that can be read too', () => {
    const text = 'symbol,pricePerKilogram,currency,date\nAl,-2,EUR,today\nXx,1,USD,2026-10-01\nNi,1';
    expect(codesFrom(() => readPriceList(text)).sort()).toEqual([
      'element/unknown /rows/1/symbol',
      'prices/date /rows/0/date',
      'prices/missing-column /header',
      'prices/price /rows/0/pricePerKilogram',
      'prices/row-length /rows/2',
      'prices/several-currencies /rows/1/currency',
    ]);
  });

  test('in words that say the line of the file and what would be right', () => {
    const [first] = faultsFrom(() => readPriceList(list(good, '', 'Ni,"1.234,50",EUR,2026-10-01,x')));
    expect(first).toEqual({
      code: 'prices/decimal-comma',
      pointer: '/rows/1/pricePerKilogram',
      detail: 'The price on line 4, "1.234,50", has a comma in it.',
      remedy: 'Write decimals with a point and thousands without a sign: 1234.50.',
    });
    expect(faultsFrom(() => readPriceList(list(good).replace('currency', 'Currency')))[0]!.detail).toBe(
      'The price list has no column "currency"; did you mean it by "Currency"?',
    );
  });

  test('any text at all is read or refused, and nothing else happens', () => {
    const pieces = fc.constantFrom(
      header,
      good,
      'Al',
      '2',
      '"',
      ',',
      '\n',
      ';',
      'EUR',
      '2026-10-01',
      '💥',
      '__proto__',
      '',
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 20, size: 'max' }), (parts) => {
        const text = `${header}\n${parts.join('')}`;
        try {
          expect(Object.keys(readPriceList(text).prices)).toEqual(['Al']);
        } catch {
          expect(faultsFrom(() => readPriceList(text)).length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
