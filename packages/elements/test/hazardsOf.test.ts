import { describe, expect, test } from 'vitest';
import { hazards } from '../src/data/hazards.ts';
import {
  elementNumber,
  elements,
  generalCaution,
  type HazardKind,
  hazardSources,
  hazardsOf,
} from '../src/index.ts';

const kindsOf = (symbol: string): string[] => hazardsOf(symbol).map(({ kind }) => kind);

describe('hazards', () => {
  test('are on record for each element, if only as an empty list', () => {
    expect(Object.keys(hazards)).toEqual(elements.map(({ symbol }) => symbol));
  });

  test('each have a text and a source', () => {
    for (const { symbol } of elements) {
      for (const { text, source } of hazardsOf(symbol)) {
        expect(text, symbol).toMatch(/\.$/);
        expect(Object.keys(hazardSources), symbol).toContain(source);
      }
    }
  });

  test('from a GHS class or a data sheet name their hazard statement, or say what the sheet says', () => {
    const silent = elements.flatMap(({ symbol }) =>
      hazardsOf(symbol).filter(({ source, text }) => source === 'GHS' && !/\bH\d{3}/.test(text)),
    );
    expect(silent).toEqual([]);
  });

  const required: [HazardKind, string[]][] = [
    ['toxic', ['Be', 'Cd', 'Pb', 'Co', 'Ni']],
    ['carcinogenic dust or fume', ['Be', 'Cd', 'Co', 'Ni', 'Cr']],
    ['toxic dust or fume', ['Mn', 'Zn', 'Pb']],
    ['toxic or volatile oxide', ['Os', 'V', 'Mo', 'W', 'Re', 'Ru']],
    ['pyrophoric powder', ['Mg', 'Ti', 'Zr', 'Hf', 'Li', 'Al']],
    ['volatile when molten', ['Zn', 'Mg', 'Mn', 'Cd', 'Li']],
    [
      'reacts with water or air',
      [
        'Li',
        'Ca',
        'Sr',
        'Sc',
        'Y',
        'La',
        'Ce',
        'Pr',
        'Nd',
        'Sm',
        'Gd',
        'Tb',
        'Dy',
        'Ho',
        'Er',
        'Tm',
        'Yb',
        'Lu',
      ],
    ],
    // Common practice of melting: none of them may meet water or an oxide crucible as a melt.
    ['reacts with water or air', ['Mg', 'Al', 'Ti', 'Zr', 'Hf']],
    ['flammable powder', ['B']],
  ];
  test.for(required)('name what is %s', ([kind, symbols]) => {
    expect(symbols.filter((symbol) => !kindsOf(symbol).includes(kind))).toEqual([]);
  });

  test('say that every element boiling below 2400 K is volatile, with its temperature', () => {
    const low = elements.filter(({ symbol }) => elementNumber(symbol, 'boilingTemperature')! < 2400);
    expect(low.length).toBeGreaterThan(10);
    for (const { symbol } of low) {
      expect(hazardsOf(symbol).at(-1)!.text).toContain(
        `Boils at ${elementNumber(symbol, 'boilingTemperature')} K`,
      );
    }
    expect(kindsOf('W')).not.toContain('volatile when molten');
  });
});

test('the general caution defers to data sheets, local codes and licensed work', () => {
  expect(generalCaution).toMatch(/safety data sheets.*local codes.*licensed/);
});

test('a symbol without data is a mistake of the caller', () => {
  expect(() => hazardsOf('Xx')).toThrow(RangeError);
});
