import type { QuantityView } from '@tiegel/contract';
import { elementRecords } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { lackInWords, lackingFor } from '../../src/ask/pool/lackingFor.ts';
import { markedTogether } from '../../src/ask/pool/markedTogether.ts';
import type { ElementView } from '../../src/server/types.ts';

const quantity = (id: string, name: string, elements: string[]) =>
  ({ id, name, needs: { elements, pairs: [], conditions: [] } }) as unknown as QuantityView;
const cost = quantity('cost', 'Cost', ['price', 'atomicMass']);
const perLitre = quantity('costPerLitre', 'Cost per litre', ['price', 'density']);
const elements = [
  { symbol: 'Fe', price: 1, atomicMass: 55.8, density: 7.9 },
  { symbol: 'Ni', price: null, atomicMass: 58.7, density: 8.9 },
] as unknown as ElementView[];

test('an element lacks what the chosen quantities compute with, each named', () => {
  const lacks = lackingFor([cost, perLitre], elements);
  expect([...lacks.keys()]).toEqual(['Ni']);
  expect(lackInWords(lacks.get('Ni')!)).toBe('lacks the price, which cost and cost per litre need');
  expect(lackInWords(lackingFor([cost], elements).get('Ni')!)).toBe('lacks the price, which cost needs');
});

test('what nothing chosen needs is not missed', () => {
  expect(lackingFor([], elements).size).toBe(0);
});

test('every column that a real quantity could need is one that the records have', () => {
  const [iron] = elementRecords(null).filter(({ symbol }) => symbol === 'Fe');
  const melting = quantity('meltingTemperature', 'Melting temperature', ['meltingTemperature']);
  expect(lackingFor([melting], [iron!]).size).toBe(0);
  // Carbon sublimes: its record has no melting temperature.
  const [carbon] = elementRecords(null).filter(({ symbol }) => symbol === 'C');
  expect(lackInWords(lackingFor([melting], [carbon!]).get('C')!)).toMatch(/melting temperature/);
});

test('a whole group is marked at once, changed to another mark, and let go when all have it', () => {
  const once = markedTogether({ Fe: 'require' }, ['Ti', 'Zr', 'Hf'], 'pool');
  expect(once).toEqual({ Fe: 'require', Ti: 'pool', Zr: 'pool', Hf: 'pool' });
  expect(markedTogether({ ...once, Ti: 'require' }, ['Ti', 'Zr', 'Hf'], 'pool').Ti).toBe('pool');
  expect(markedTogether(once, ['Ti', 'Zr', 'Hf'], 'pool')).toEqual({ Fe: 'require' });
});
