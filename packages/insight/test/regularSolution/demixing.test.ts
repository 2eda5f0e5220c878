import { pairEnthalpy, parseAlloy } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demixing, demixingTrust } from '../../src/index.ts';
import { alloys, facts, turned, withoutPair, withValues } from '../fixtures/alloys.ts';
import { areaUnderCurve } from '../fixtures/areaUnderCurve.ts';

const of = (alloy: string) => demixing(parseAlloy(alloy), facts)!;

// Worked by another program of the project's makers from the same tables; five digits as printed.
test.each([
  ['CoCrFeMnNi', 239.98],
  ['CoCrCuFeNi', 1684.4],
  ['CuNi', 962.18],
  ['AlCoCrFeNi', 66.896],
  ['NbMoTaW', 22.797],
  ['HfNbTaTiZr', 704.24],
  ['CuFe', 3127.1],
])('%s separates below %d K, to half of the last printed digit', (alloy, kelvin) => {
  const digits = 5 - Math.ceil(Math.log10(kelvin));
  expect(Math.abs(of(alloy).temperature! - kelvin)).toBeLessThanOrEqual(0.5 * 10 ** -digits * 1.0001);
});

// The same source; three decimals as printed.
test.each([
  ['CoCrCuFeNi', { Cu: 0.859, Fe: -0.361, Cr: -0.346, Co: -0.085, Ni: -0.067 }],
  ['HfNbTaTiZr', { Nb: 0.602, Ta: 0.457, Hf: -0.449, Zr: -0.449, Ti: -0.16 }],
])('the mode of %s says who leaves whom', (alloy, mode) => {
  const found = of(alloy).mode;
  expect(Object.keys(found).sort()).toEqual(Object.keys(mode).sort());
  for (const [symbol, change] of Object.entries(mode)) {
    expect(Math.abs(found[symbol]! - change), symbol).toBeLessThanOrEqual(0.0005001);
  }
});

describe('in words', () => {
  test('the elements that take part are named, those that hardly do are not', () => {
    expect(of('CoCrCuFeNi').words).toBe(
      'Below 1680 K, 0.95 of the mean melting temperature, copper would leave iron and chromium, given time.',
    );
    // 0.13 of the melting temperature: no time is long enough there.
    expect(of('CoCrFeMnNi').words).toBe(
      'Below 240 K, 0.13 of the mean melting temperature, manganese would leave chromium and iron, though atoms hardly move so cold.',
    );
    expect(of('HfNbTaTiZr').words).toContain('niobium and tantalum would leave hafnium and zirconium');
  });

  test('above melting it is the melt that may separate', () => {
    expect(of('CuFe').words).toBe(
      'Below 3130 K, above the mean melting temperature of 1580 K, copper would leave iron: the melt itself may separate.',
    );
  });

  test('what never separates is said to', () => {
    expect(of('NbTa')).toMatchObject({ temperature: null, ratioToMelting: null, mode: {} });
    expect(of('NbTa').words).toBe('The random solution would separate at no temperature.');
    expect(of('Ni').temperature).toBeNull();
  });

  test('without a melting temperature there is no ratio, and the sentence does without', () => {
    const found = demixing(parseAlloy('CuNi'), withValues('meltingTemperature', { Cu: null }))!;
    expect(found.ratioToMelting).toBeNull();
    expect(found.words).toBe('Below 962 K copper would leave nickel.');
  });

  test('every answer carries how far to trust it', () => {
    for (const alloy of ['CoCrCuFeNi', 'NbTa', 'Ni']) expect(of(alloy).trust).toBe(demixingTrust);
    expect(demixingTrust).toContain('not a prediction');
  });
});

test('the ratio is to the mean melting temperature of the elements', () => {
  const found = of('CuNi');
  expect(found.ratioToMelting).toBeCloseTo(found.temperature! / ((1357.77 + 1728) / 2), 12);
});

test('a binary follows 2 · 4H c(1 − c)/R to 1e-9', () => {
  fc.assert(
    fc.property(alloys(undefined, { least: 2, most: 2 }), (alloy) => {
      const [[a, one], [b, other]] = Object.entries(alloy) as [[string, number], [string, number]];
      const share = one / (one + other);
      const closed = (8000 * pairEnthalpy(a, b)! * share * (1 - share)) / 8.314462618;
      const found = demixing(alloy, facts)!.temperature;
      if (closed <= 0) expect(found).toBeNull();
      else expect(Math.abs(found! / closed - 1)).toBeLessThan(1e-9);
    }),
  );
});

test('the order of the elements and the total of the amounts change nothing', () => {
  fc.assert(
    fc.property(alloys(), (alloy) => {
      const scaled = Object.fromEntries(
        Object.entries(alloy).map(([symbol, amount]) => [symbol, 3 * amount]),
      );
      const [one, other, third] = [alloy, turned(alloy), scaled].map((each) => demixing(each, facts)!);
      expect(other).toEqual(one);
      if (one!.temperature === null) expect(third!.temperature).toBeNull();
      else expect(third!.temperature! / one!.temperature).toBeCloseTo(1, 10);
    }),
  );
});

// On the published alloys with a phase on record: 1 is a perfect score, 0.5 a coin. The text quotes it.
test('it does not tell one phase from several, as the text says', () => {
  const cases = publishedAlloys().flatMap(({ composition, singlePhase }) => {
    if (singlePhase === null) return [];
    const { temperature, ratioToMelting } = demixing(composition, facts)!;
    if (temperature !== null && ratioToMelting === null) return [];
    return [{ positive: singlePhase, score: ratioToMelting ?? 0 }];
  });
  expect(cases.length).toBeGreaterThan(290);
  expect(areaUnderCurve(cases)).toBeCloseTo(0.52, 2);
  expect(demixingTrust).toContain('AUC 0.52');
});

test('an unknown pair gives no answer, an unknown element is a mistake of the caller', () => {
  expect(demixing(parseAlloy('AlNi'), withoutPair('Al', 'Ni'))).toBeNull();
  expect(() => demixing({ Xx: 1 }, facts)).toThrow(RangeError);
});
