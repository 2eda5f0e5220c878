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

  test('a bracket counts the amount behind it, which what is in it shares', () => {
    expect(parseAlloy('(FeCo)50Ni50')).toEqual({ Co: 25, Fe: 25, Ni: 50 });
    expect(parseAlloy('(CoCrFeNi)94Al6')).toEqual({ Al: 6, Co: 23.5, Cr: 23.5, Fe: 23.5, Ni: 23.5 });
    expect(parseAlloy('( Fe3 Co1 ) 50 [NiCu] 50')).toEqual({ Co: 12.5, Cu: 25, Fe: 37.5, Ni: 25 });
    // 96 at.% of (0.75 of Fe0.6Co0.4, 0.25 B): 96 * 0.75 * 0.6 = 43.2.
    const two = parseAlloy('[(Fe0.6Co0.4)0.75B0.25]96Nb4');
    expect([two.Fe, two.Co, two.B, two.Nb].map((share) => Number(share!.toFixed(9)))).toEqual([
      43.2, 28.8, 24, 4,
    ]);
  });

  test('a bracket without an amount counts the sum of what is in it', () => {
    expect(parseAlloy('(CoCrFe)Ni')).toEqual(parseAlloy('CoCrFeNi'));
    expect(parseAlloy('(Fe30Co20)Ni50')).toEqual({ Co: 20, Fe: 30, Ni: 50 });
  });

  test('may have its digits below the line', () => {
    expect(parseAlloy('Al₀.₃CoCrFeNi')).toEqual(parseAlloy('Al0.3CoCrFeNi'));
    expect(parseAlloy('(FeCo)₅₀Ni₅₀')).toEqual(parseAlloy('(FeCo)50Ni50'));
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
    ['(AlNi', ['alloy/unreadable']],
    ['AlNi)2', ['alloy/unreadable']],
    ['(AlNi]2', ['alloy/unreadable']],
    ['()2Al', ['alloy/unreadable']],
    ['(((AlNi)2Fe)3Co)4', ['alloy/unreadable']],
    ['(AlNi)0Fe', ['alloy/amount']],
    ['(AlNi)50Al50', ['alloy/repeated-element']],
    ['(XxNi)50(NiAl0)50', ['element/unknown', 'alloy/repeated-element', 'alloy/amount']],
    ['(Xx(Ni(Al', ['element/unknown', 'alloy/unreadable']],
    ['(AlNi)2,5Fe', ['alloy/unreadable']],
    ['Al2₃Ni', ['alloy/unreadable']],
    ['₃AlNi', ['alloy/unreadable']],
    ['Al₂O₃', ['element/no-data']],
    ['Fe-20Cr-10Ni', ['alloy/unreadable']],
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

  test('brackets are refused at their place', () => {
    const placeOf = (text: string) => faultsFrom(() => parseAlloy(text))[0]!.detail;
    expect(placeOf('Al(NiFe')).toContain('at character 3: the bracket that opens there is never closed.');
    expect(placeOf('(((AlNi)2Fe)3Co)4')).toContain(
      'at character 3: brackets stand in one another at most twice.',
    );
    expect(placeOf('(AlNi]2')).toContain('at character 6: "]" stands where ")" would close the bracket.');
    expect(placeOf('Fe(AlNi)0')).toBe('The amount of the bracket (character 3) is 0, which is not possible.');
  });

  // Masses 55.845 (Fe), 51.9961 (Cr), 58.6934 (Ni) u: 70/55.845 : 20/51.9961 : 10/58.6934 = 69.31 : 21.27 : 9.42.
  test('hyphens stand for mass per cent, which is said with what would be right', () => {
    const [inAtoms] = faultsFrom(() => parseAlloy('Fe-20Cr-10Ni'));
    expect(inAtoms!.detail).toContain('at character 3');
    expect(inAtoms!.detail).toContain('they stand for mass per cent');
    expect(inAtoms!.remedy).toBe(
      'Write at.%, here Cr21.27 Fe69.31 Ni9.42; in mass per cent it is Fe70Cr20Ni10, which the terminal reads with --wt.',
    );
    expect(faultsFrom(() => parseAlloy('Fe–20Cr–10Ni', { by: 'weight' }))[0]!.remedy).toBe(
      'Write Fe70Cr20Ni10.',
    );
    for (const text of ['Fe-20Cr-90Ni', 'Fe-20Cr-10Cr', 'Fe-20Xx', 'Co-Cr-Fe']) {
      expect(faultsFrom(() => parseAlloy(text))[0]!.remedy).toMatch(/^Write element symbols/);
    }
  });

  test('small letters are answered with the one reading that they have', () => {
    const remedyOf = (text: string) => faultsFrom(() => parseAlloy(text))[0]!.remedy;
    expect(remedyOf('cocrfemnni')).toBe('Begin every symbol with a capital letter: CoCrFeMnNi.');
    expect(remedyOf('Al20co30 (crfe)50')).toBe(
      'Begin every symbol with a capital letter: Al20Co30 (CrFe)50.',
    );
    // Y and B, or ytterbium; a symbol twice; no symbol at all.
    for (const text of ['feyb', 'fefe', 'zzfe', 'fe'.repeat(400)]) {
      expect(remedyOf(text), text).toMatch(/^Write element symbols/);
    }
  });

  test('decimals without a point are answered with the reading that they have', () => {
    for (const text of ['Al0,5CoCrFeNi', 'Al0·5CoCrFeNi', ' Al0,5 Co Cr Fe Ni']) {
      const faults = faultsFrom(() => parseAlloy(text));
      // Not that aluminium had an amount of 0.
      expect(faults.map(({ code }) => code)).toEqual(['alloy/unreadable']);
      expect(faults[0]!.detail).toContain('decimals are written with a point');
    }
    const remedyOf = (text: string) => faultsFrom(() => parseAlloy(text))[0]!.remedy;
    expect(remedyOf('Al0,5CoCrFeNi')).toBe('Write decimals with a point: Al0.5CoCrFeNi.');
    expect(remedyOf('(Fe₀,₅Co₀,₅)₉₀B₁₀')).toBe('Write decimals with a point: (Fe₀.₅Co₀.₅)₉₀B₁₀.');
    expect(remedyOf('(FeCo)0,5Ni1,5')).toBe('Write decimals with a point: (FeCo)0.5Ni1.5.');
    // Commas that part symbols are no decimal signs.
    expect(remedyOf('Al0,5,Co')).toMatch(/^Write element symbols/);
    expect(codesFrom(() => parseAlloy('Al0,Co'))).toEqual(['alloy/amount', 'alloy/unreadable']);
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
      fc.stringMatching(/^[A-Zaelnoi0-9., ()₂[\]-]{0,30}$/),
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
