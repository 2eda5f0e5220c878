import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factsFor, readOwnColumn, withOwnColumn } from '../src/index.ts';
import { codesFrom, faultsFrom } from './faultsFrom.ts';

const header = 'symbol,value,name,unit,mixing';
const file = (...rows: string[]): string => [header, ...rows].join('\n');
const good = 'Al,237,Thermal conductivity,W/(m K),volume';

describe('a column of one’s own', () => {
  test('is read with its name, unit and mixing from the first row', () => {
    expect(readOwnColumn(file(good, 'Ni,91,,,', 'Ti,-21.9e0,Thermal conductivity,,volume'))).toEqual({
      id: 'thermalConductivity',
      name: 'Thermal conductivity',
      unit: 'W/(m K)',
      mixing: 'volume',
      values: { Al: 237, Ni: 91, Ti: -21.9 },
    });
  });
  test('may have its parts in any order, further ones, a byte order mark and Windows line ends', () => {
    const text = '\uFEFFnote,mixing,unit,value,name,symbol\r\nx,mole,,+.5,Rank,Os\r\n';
    expect(readOwnColumn(text)).toMatchObject({ id: 'rank', unit: '', mixing: 'mole', values: { Os: 0.5 } });
  });
  test.for([
    ['Wärmeleitfähigkeit bei 20 °C', 'warmeleitfahigkeitBei20C'],
    ['CO2 per kg', 'cO2PerKg'],
    ['my_column (2)', 'myColumn2'],
    ['Preis', 'preis'],
  ] as const)('called "%s" is named %s in formulas', ([name, id]) => {
    expect(readOwnColumn(file(`Al,1,${name},,mole`)).id).toBe(id);
  });
  test('stands in facts beside the others, null where it says nothing', () => {
    const facts = withOwnColumn(factsFor(['Al', 'Co', 'Ni']), readOwnColumn(file(good, 'Ni,91,,,')));
    expect(facts.columns.thermalConductivity).toEqual([237, null, 91]);
    expect(facts.columns.density).toEqual(factsFor(['Al', 'Co', 'Ni']).columns.density);
  });
});

test('values from a spreadsheet, parted by semicolons, may have decimal commas', () => {
  expect(readOwnColumn(`${header.replaceAll(',', ';')}\nAl;2,5;x;;mole\n`).values).toEqual({ Al: 2.5 });
});

describe('a column is refused, each fault with its place', () => {
  test.for([
    ['nothing', '', ['column/empty']],
    ['a header alone', header, ['column/empty']],
    [
      'thousands or decimals',
      `${header.replaceAll(',', ';')}\nAl;1,250;x;;mole`,
      ['column/decimal-comma /rows/0/value'],
    ],
    ['an open quote', file('Al,2,"x,,mole'), ['column/unreadable']],
    ['too much text', 'x'.repeat(100_001), ['column/too-large']],
    ['too many rows', file(...Array(501).fill(good)), ['column/too-large']],
    ['a misspelt part', file(good).replace('mixing', 'mixng'), ['column/missing-column /header']],
    ['a part twice', `${header},unit\n${good},K`, ['column/repeated-column /header']],
    ['a decimal comma', file('Al,2,5,x,,mole'), ['column/row-length /rows/0']],
    ['a quoted decimal comma', file('Al,"2,5",x,,mole'), ['column/decimal-comma /rows/0/value']],
    ['a word for a value', file(good, 'Ni,high,,,'), ['column/value /rows/1/value']],
    ['no value', file(good, 'Ni,,,,'), ['column/value /rows/1/value']],
    ['an endless value', file('Al,1e999,x,,mole'), ['column/value /rows/0/value']],
    ['a hexadecimal value', file('Al,0x10,x,,mole'), ['column/value /rows/0/value']],
    ['an unknown symbol', file('Xx,2,x,,mole'), ['element/unknown /rows/0/symbol']],
    ['an element without data', file('U,2,x,,mole'), ['element/no-data /rows/0/symbol']],
    ['an element twice', file(good, 'Ni,1,,,', 'Al,2,,,'), ['column/repeated-element /rows/2/symbol']],
    ['no name', file('Al,2,,,mole'), ['column/name /rows/0/name']],
    ['a name without a letter', file('Al,2,17 %,,mole'), ['column/name /rows/0/name']],
    ['an endless name', file(`Al,2,${'x'.repeat(61)},,mole`), ['column/name /rows/0/name']],
    ['the name of a column that there is', file('Al,2,Density,,mole'), ['column/name-taken /rows/0/name']],
    ['the name of the price', file('Al,2,price,,mole'), ['column/name-taken /rows/0/name']],
    ['an endless unit', file(`Al,2,x,${'m'.repeat(31)},mole`), ['column/unit /rows/0/unit']],
    ['no mixing', file('Al,2,x,,'), ['column/mixing /rows/0/mixing']],
    ['an unknown mixing', file('Al,2,x,,weight'), ['column/mixing /rows/0/mixing']],
    ['two names', file(good, 'Ni,1,Cost,,'), ['column/several /rows/1/name']],
    ['two mixings', file(good, 'Ni,1,,,mass'), ['column/several /rows/1/mixing']],
    [
      'all at once',
      file('Xx,?,x,,mole', 'Ni,1,,K,'),
      ['element/unknown /rows/0/symbol', 'column/value /rows/0/value', 'column/several /rows/1/unit'],
    ],
  ] as const)('%s', ([, text, codes]) => {
    expect(codesFrom(() => readOwnColumn(text))).toEqual(codes);
  });

  test('in whole sentences that name the line', () => {
    const [fault] = faultsFrom(() => readOwnColumn(file(good, '', 'Ni,high,,,')));
    expect(fault!.detail).toBe('The value on line 4 is "high".');
  });
});

test('whatever text comes is read or refused, never worse', () => {
  const pieces = fc.constantFrom(
    'symbol',
    'value',
    'name',
    'unit',
    'mixing',
    ',',
    '\n',
    '"',
    'Al',
    '1',
    'mole',
    ';',
  );
  fc.assert(
    fc.property(fc.array(pieces, { maxLength: 40, size: 'max' }), (parts) => {
      for (const text of [parts.join(''), `${header}\n${parts.join('')}`]) {
        try {
          expect(readOwnColumn(text).id).not.toBe('');
        } catch {
          expect(faultsFrom(() => readOwnColumn(text)).length).toBeGreaterThan(0);
        }
      }
    }),
  );
});

test('a zero has no sign', () => {
  const { values } = readOwnColumn('symbol,value,name,unit,mixing\nAl,-0,Invented,,mole\nNi,-0.0,,,\n');
  expect(values).toEqual({ Al: 0, Ni: 0 });
});
