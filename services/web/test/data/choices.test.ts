import { elementRecords, pairRecords } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { askedOf, readAlloyFilters, strangeWords } from '../../src/data/alloys/alloyFilters.ts';
import { decimalsIn } from '../../src/data/elements/elementColumns.tsx';
import { matchingElements } from '../../src/data/elements/matchingElements.ts';
import { chosenElements, pairsAmong, toneOf } from '../../src/data/pairs/pairChoice.ts';
import { partnersOf } from '../../src/data/pairs/partnersOf.ts';

const elements = elementRecords(null);
const found = (text: string) => matchingElements(elements, text).map(({ symbol }) => symbol);

test('elements are found by symbols, else by what their name, family or hazards say', () => {
  expect(found('')).toHaveLength(elements.length);
  expect(found('fe')).toEqual(['Fe']);
  expect(found('Fe, ni co')).toEqual(['Fe', 'Co', 'Ni']);
  expect(found('nick')).toEqual(['Ni']);
  expect(found('n')).toContain('Nb');
  expect(found('lanthanide')).toContain('La');
  expect(found('pyrophoric')).toContain('Li');
  expect(found('Xx')).toEqual([]);
});

test('pairs are of one element, among several, or all', () => {
  const pairs = [
    { a: 'Al', b: 'Fe' },
    { a: 'Al', b: 'Ni' },
    { a: 'Fe', b: 'Ni' },
    { a: 'Fe', b: 'Ti' },
  ];
  const named = (chosen: string[]) => pairsAmong(pairs, chosen).map(({ a, b }) => a + b);
  expect(named([])).toHaveLength(4);
  expect(named(['Al'])).toEqual(['AlFe', 'AlNi']);
  expect(named(['Al', 'Fe', 'Ni'])).toEqual(['AlFe', 'AlNi', 'FeNi']);
  const known = ['Al', 'Ti', 'Fe', 'Ni'];
  expect(chosenElements(known, 'ni, al–xx')).toEqual({ chosen: ['Al', 'Ni'], strange: ['xx'] });
});

// Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817: Al-Ni -22, Fe-C -50 kJ/mol (numbers typed from memory: weak evidence).
test('the partners of an element begin with the most attracted', () => {
  const partners = partnersOf(pairRecords(), 'Fe');
  expect(partners[0]).toEqual({ partner: 'C', mixingEnthalpy: -50 });
  expect(partnersOf(pairRecords(), 'Ni')).toContainEqual({ partner: 'Al', mixingEnthalpy: -22 });
});

test('the tint of a pair has three steps to either side', () => {
  expect([-131, -30, -10, -2, -1.5, 0, 1, 2, 10, 30, 76].map(toneOf)).toEqual([
    ...['seek-3', 'seek-3', 'seek-2', 'seek-1', 'chance', 'chance', 'chance'],
    ...['avoid-1', 'avoid-2', 'avoid-3', 'avoid-3'],
  ]);
});

test('filters of alloys are asked as the API takes them, and strange words are told', () => {
  const known = ['Co', 'Fe', 'Ni'];
  const filters = readAlloyFilters(new URLSearchParams('text= x &has=ni fe, Qq&phase=FCC&other=1'));
  expect(askedOf(filters, known).toString()).toBe('text=x&has=Fe%2CNi&phase=FCC');
  expect(strangeWords(filters, known)).toEqual(['Qq']);
});

test('values are shown with the decimals that they were written with', () => {
  expect(decimalsIn([1, 2.5, 3.25])).toBe(2);
  expect(decimalsIn([0.123456789])).toBe(4);
  expect(decimalsIn([])).toBe(0);
});
