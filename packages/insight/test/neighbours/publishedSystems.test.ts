import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import { expect, test } from 'vitest';
import { publishedSystems, publishedWithin } from '../../src/index.ts';

// Cantor, Chang, Knight & Vincent, Mater. Sci. Eng. A 375–377 (2004) 213: one fcc solution.
test('the alloy of Cantor is published, most often as fcc', () => {
  const cantor = publishedSystems().get('Co Cr Fe Mn Ni');
  expect(cantor?.symbols).toEqual(['Co', 'Cr', 'Fe', 'Mn', 'Ni']);
  expect(cantor?.phases[0]?.phases).toBe('FCC');
  expect(cantor?.references).toBeGreaterThanOrEqual(cantor!.alloys);
});

test('every published alloy is in exactly one system', () => {
  const systems = [...publishedSystems().values()];
  expect(systems.reduce((sum, { alloys }) => sum + alloys, 0)).toBe(publishedAlloys().length);
  for (const { alloys, phases } of systems) {
    expect(phases.reduce((sum, one) => sum + one.alloys, 0)).toBe(alloys);
  }
});

test('a set of elements that nobody has melted is not there', () => {
  expect(publishedSystems().get('Be Os Sr Tm')).toBeUndefined();
});

test('of a pool come the systems that lie within it, have what is required and are large enough', () => {
  const pool = ['Al', 'Co', 'Cr', 'Fe', 'Mn', 'Ni'];
  const found = publishedWithin(pool, { require: ['Al'], min: 5, max: 5 });
  expect(found.map(({ symbols }) => symbols.join(' '))).toContain('Al Co Cr Fe Ni');
  for (const { symbols } of found) {
    expect(symbols).toHaveLength(5);
    expect(symbols).toContain('Al');
    expect(pool).toEqual(expect.arrayContaining(symbols));
  }
  const byHand = publishedAlloys().filter(({ composition }) => {
    const symbols = Object.keys(composition);
    return symbols.length === 5 && symbols.includes('Al') && symbols.every((one) => pool.includes(one));
  });
  expect(found.reduce((sum, { alloys }) => sum + alloys, 0)).toBe(byHand.length);
});
