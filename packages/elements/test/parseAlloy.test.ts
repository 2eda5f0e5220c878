import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseAlloy } from '../src/index.ts';
import { codesFrom, faultsFrom } from './faultsFrom.ts';

describe('an alloy', () => {
  test('without amounts is equimolar, symbols alphabetical', () => {
    expect(Object.entries(parseAlloy('NiFeCrCoAl'))).toEqual([
      ['Al', 20],
      ['Co', 20],
      ['Cr', 20],
      ['Fe', 20],
      ['Ni', 20],
    ]);
  });

  test('keeps amounts that add up to 100', () => {
    expect(parseAlloy('Al7.69Co30.77Fe61.54')).toEqual({ Al: 7.69, Co: 30.77, Fe: 61.54 });
  });

  test('may have spaces anywhere between symbols and amounts', () => {
    expect(parseAlloy('  Co 20 Cr20\tFe20\nMn 20 Ni20 ')).toEqual(parseAlloy('CoCrFeMnNi'));
  });

  test('counts an omitted amount as one and normalises any total', () => {
    // Al0.5CoCrCuFeNi: a half in five and a half
    expect(parseAlloy('Al0.5CoCrCuFeNi').Al).toBeCloseTo(100 / 11, 12);
    expect(parseAlloy('Fe.5Ni.5')).toEqual({ Fe: 50, Ni: 50 });
    expect(parseAlloy('Fe999999999Ni999999999')).toEqual({ Fe: 50, Ni: 50 });
  });

  test('takes shares in full double precision', () => {
    expect(parseAlloy('Co33.333333333333336Cr33.333333333333336Fe33.333333333333336').Cr).toBeCloseTo(
      100 / 3,
      13,
    );
  });

  // Conversion by hand with the masses 26.9815385 (Al) and 58.6934 (Ni) u.
  test('by weight is turned into at.%', () => {
    const aluminium = 31.49 / 26.9815385;
    const nickel = 68.51 / 58.6934;
    expect(parseAlloy('Al31.49Ni68.51', { by: 'weight' }).Al).toBeCloseTo(
      (100 * aluminium) / (aluminium + nickel),
      12,
    );
  });
});

describe('an alloy is refused with code, place and remedy', () => {
  const wrong: [string, string[]][] = [
    ['', ['alloy/empty']],
    [' \t ', ['alloy/empty']],
    ['alcocr', ['alloy/unreadable']],
    ['12AlNi', ['alloy/unreadable']],
    ['Al7,69Ni', ['alloy/unreadable']],
    ['Al-5Ni', ['alloy/unreadable']],
    ['Al7.Ni', ['alloy/unreadable']],
    ['Al1.2.3Ni', ['alloy/unreadable']],
    ['Al20%Ni80%', ['alloy/unreadable']],
    ['(AlNi)2', ['alloy/unreadable']],
    ['Al1e5Ni', ['alloy/unreadable']],
    ['Al٣Ni', ['alloy/unreadable']],
    ['<b>Al</b>', ['alloy/unreadable']],
    ['AlXxNi', ['element/unknown']],
    ['FeU', ['element/no-data']],
    ['AlNiAl', ['alloy/repeated-element']],
    ['Al0Ni', ['alloy/amount']],
    ['Al0.000Ni', ['alloy/amount']],
    [`Al${'9'.repeat(400)}Ni`, ['alloy/amount']],
    ['Al0.0000001Ni999999999', ['alloy/share-too-small']],
    ['A'.repeat(1001), ['alloy/too-long']],
    [
      'XxFeFeUAl0?',
      ['element/unknown', 'alloy/repeated-element', 'element/no-data', 'alloy/amount', 'alloy/unreadable'],
    ],
  ];
  test.for(wrong.map(([text, codes]) => [text.slice(0, 40), text, codes] as const))(
    '%s',
    ([, text, codes]) => {
      expect(codesFrom(() => parseAlloy(text))).toEqual(codes);
    },
  );

  test('the place is the character, counted from 1, spaces included', () => {
    expect(faultsFrom(() => parseAlloy(' Al, Ni'))[0]!.detail).toContain('at character 4: ","');
    expect(faultsFrom(() => parseAlloy('AlXxNi'))[0]!.detail).toBe(
      '"Xx" (character 3) is not the symbol of an element.',
    );
    expect(faultsFrom(() => parseAlloy('Fe NiFe2'))[0]!.detail).toBe(
      'Fe stands in the alloy twice, at characters 1 and 6.',
    );
  });

  // A zero typed for the letter O would otherwise turn cobalt into an absent carbon.
  test('a zero for an O does not lose an element', () => {
    expect(faultsFrom(() => parseAlloy('C0CrFeNi'))[0]!.detail).toBe(
      'The amount of C (character 1) is 0, which is not possible.',
    );
  });

  test('the pointer that was given stands at every fault', () => {
    expect(codesFrom(() => parseAlloy('AlXx', { pointer: '/compositions/3' }))).toEqual([
      'element/unknown /compositions/3',
    ]);
  });

  test('any text at all is read or refused with whole sentences', () => {
    const texts = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc.stringMatching(/^[A-Zaelnoi0-9., -]{0,30}$/),
    );
    fc.assert(
      fc.property(texts, (text) => {
        let total: number;
        try {
          total = Object.values(parseAlloy(text)).reduce((sum, share) => sum + share, 0);
        } catch {
          for (const { detail, remedy } of faultsFrom(() => parseAlloy(text))) {
            expect(detail).toMatch(/\.$/);
            expect(remedy).toMatch(/\.$/);
          }
          return;
        }
        expect(total).toBeCloseTo(100, 9);
      }),
      { numRuns: 2000 },
    );
  });
});
