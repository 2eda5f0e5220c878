import { elements as named } from 'chemical-elements';
import outside from 'periodic-table/data.json' with { type: 'json' };
import { describe, expect, test } from 'vitest';
import { elementOf, elements, isAvailable, symbols, unavailable } from '../src/index.ts';

const everyElement = [...elements, ...unavailable].sort((a, b) => a.atomicNumber - b.atomicNumber);

describe('the periodic table', () => {
  test('has 118 elements, 56 of them with data', () => {
    expect(elements).toHaveLength(56);
    expect(unavailable).toHaveLength(62);
    expect(everyElement.map(({ atomicNumber }) => atomicNumber)).toEqual(
      Array.from({ length: 118 }, (_, index) => index + 1),
    );
  });

  // chemical-elements 2.3.3
  test('has the symbols and names of an outside package', () => {
    const theirs = named.map(({ number, symbol, name }) => `${number} ${symbol} ${name}`);
    expect(everyElement.map(({ atomicNumber, symbol, name }) => `${atomicNumber} ${symbol} ${name}`)).toEqual(
      theirs,
    );
  });

  // periodic-table 0.0.8, in its own words; its families end at copernicium. Usage differs for two
  // elements that have no data here: polonium is a metalloid there, lawrencium a transition metal.
  test('has the families of an outside package', () => {
    const words: Record<string, string> = {
      lanthanoid: 'lanthanide',
      actinoid: 'actinide',
      metal: 'post-transition metal',
    };
    const theirs = new Map(
      (outside as { symbol: string; groupBlock: string }[]).map(({ symbol, groupBlock }) => [
        symbol,
        groupBlock,
      ]),
    );
    const others = everyElement
      .slice(0, 112)
      .filter(({ symbol, family }) => family !== (words[theirs.get(symbol)!] ?? theirs.get(symbol)))
      .map(({ symbol }) => symbol);
    expect(others).toEqual(['Po', 'Lr']);
  });

  test('gives each element a cell of its own; lanthanides and actinides are drawn apart', () => {
    const cells = everyElement.map(
      ({ period, group, atomicNumber }) => `${period} ${group ?? `apart ${atomicNumber}`}`,
    );
    expect(new Set(cells).size).toBe(118);
    const apart = everyElement.filter(({ group }) => group === null).map(({ atomicNumber }) => atomicNumber);
    expect(apart).toEqual([
      ...Array.from({ length: 15 }, (_, n) => 57 + n),
      ...Array.from({ length: 15 }, (_, n) => 89 + n),
    ]);
  });

  // The ends of the periods are the noble gases (2, 10, 18 ...): every period begins in group 1 and ends in 18.
  test('runs from group 1 to 18 in every period', () => {
    for (let period = 1; period <= 7; period++) {
      const groups = everyElement.filter((element) => element.period === period).map(({ group }) => group);
      expect([groups[0], groups.at(-1)]).toEqual([1, 18]);
      const inTable = groups.filter((group) => group !== null);
      expect(inTable).toEqual([...inTable].sort((a, b) => a - b));
    }
  });
});

test('an element is found by its symbol, whatever the word', () => {
  expect(elementOf('Fe')?.name).toBe('Iron');
  expect(elementOf('Og')?.period).toBe(7);
  for (const word of ['fe', '', 'constructor', '__proto__']) expect(elementOf(word)).toBeNull();
  expect([isAvailable('Fe'), isAvailable('U'), isAvailable('toString')]).toEqual([true, false, false]);
});

test('symbols are alphabetical', () => {
  expect(symbols).toEqual(elements.map(({ symbol }) => symbol).sort());
});
