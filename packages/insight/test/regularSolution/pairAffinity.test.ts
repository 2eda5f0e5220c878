import { pairEnthalpy, parseAlloy } from '@tiegel/elements';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pairAffinity } from '../../src/index.ts';
import { alloys, facts, turned, withoutPair } from '../fixtures/alloys.ts';

const of = (alloy: string, annealTemperature = 3000) =>
  pairAffinity(parseAlloy(alloy), facts, { annealTemperature })!;

// First order: α = 2 c(1 − c) · 4H/(zRT); bcc below a valence electron concentration of 7.5.
test('a binary follows its closed form', () => {
  const { pairs, coordination } = of('Cr30W70');
  expect(coordination).toBe(8);
  expect(pairs).toHaveLength(1);
  expect(pairs[0]!.shortRangeOrder).toBeCloseTo((2 * 0.21 * 4000 * 1) / (8 * 8.314462618 * 3000), 12);
  expect(pairs[0]!.weight).toBeCloseTo(0.42, 12);
});

test('the lattice follows the valence electron concentration', () => {
  expect(of('CoCrFeMnNi').coordination).toBe(12);
  expect(of('NbMoTaW').coordination).toBe(8);
});

test('pairs attract in AlCoCrFeNi as their enthalpies say, strongest first', () => {
  const { pairs, words } = of('AlCoCrFeNi');
  expect(pairs).toHaveLength(10);
  expect(pairs[0]).toMatchObject({ a: 'Al', b: 'Ni', limited: false });
  expect(pairs[0]!.shortRangeOrder).toBeLessThan(0);
  expect(words).toMatch(/^At 3000 K Al–Ni \(α −0\.\d\d\) seek each other most, /);
});

test('the sentence names the lowest and the highest parameter, not the pair with the most bonds', () => {
  const { pairs, words } = of('Cr35Cu5Fe30Ni25V5');
  const byParameter = pairs.toSorted((p, q) => p.shortRangeOrder - q.shortRangeOrder);
  expect(pairs[0]).toMatchObject({ a: 'Cr', b: 'Ni' });
  expect(byParameter[0]).toMatchObject({ a: 'Ni', b: 'V' });
  expect(byParameter.at(-1)).toMatchObject({ a: 'Cr', b: 'V' });
  expect(words).toMatch(/^At 3000 K Ni–V \(α −0\.12\) seek each other most, Cr–V \(α 0\.07\) avoid/);
});

// Heat capacity is positive: to first order, order lowers the energy.
test('order never raises the energy', () => {
  fc.assert(
    fc.property(alloys(), (alloy) => {
      const { pairs } = pairAffinity(alloy, facts, { annealTemperature: 3500 })!;
      if (pairs.some(({ limited }) => limited)) return;
      const change = pairs.reduce(
        (sum, { a, b, weight, shortRangeOrder }) => sum - weight * shortRangeOrder * pairEnthalpy(a, b)!,
        0,
      );
      expect(change).toBeLessThan(1e-9);
    }),
  );
});

test('twice the temperature halves every parameter', () => {
  const [cold, hot] = [of('CoCrFeMnNi', 1500), of('CoCrFeMnNi', 3000)];
  for (const [at, { shortRangeOrder }] of cold.pairs.entries()) {
    expect(hot.pairs[at]!.shortRangeOrder).toBeCloseTo(shortRangeOrder / 2, 12);
  }
});

// P = c c (1 − α) is a share of bonds: not below 0, and no element has more bonds than it has.
test('no parameter leaves what is possible, and one held at its edge says so', () => {
  fc.assert(
    fc.property(alloys(), fc.integer({ min: 4, max: 3500 }), (alloy, annealTemperature) => {
      const total = Object.values(alloy).reduce((sum, amount) => sum + amount, 0);
      for (const { a, b, shortRangeOrder } of pairAffinity(alloy, facts, { annealTemperature })!.pairs) {
        const [one, other] = [alloy[a]! / total, alloy[b]! / total];
        const together = one * other * (1 - shortRangeOrder);
        expect(together).toBeGreaterThanOrEqual(-1e-12);
        expect(together).toBeLessThanOrEqual(Math.min(one, other) + 1e-12);
      }
    }),
  );
  expect(of('CuFe', 10).pairs[0]).toMatchObject({ shortRangeOrder: 1, limited: true });
});

test('below demixing or ordering the sentence says to read the signs only', () => {
  expect(of('CuFe', 1000).words).toContain('the first order does not hold below 3130 K');
  expect(of('CuFe', 3400).words).not.toContain('does not hold');
  expect(of('CuFe').validAbove).toBeCloseTo(3127.08, 2);
});

test('nothing to say of a pure element or of indifferent pairs, and no answer for an unknown one', () => {
  expect(of('Ni')).toMatchObject({ pairs: [], validAbove: null });
  expect(of('NbTa').words).toBe('At 3000 K neighbours are as chance has them.');
  expect(pairAffinity({ Al: 1, Ni: 1 }, withoutPair('Al', 'Ni'))).toBeNull();
});

test('the order of writing changes nothing', () => {
  fc.assert(
    fc.property(alloys(), (alloy) => {
      expect(pairAffinity(turned(alloy), facts)).toEqual(pairAffinity(alloy, facts));
    }),
  );
});

// Valence electrons by hand: AlCoCrFeNi (3 + 9 + 6 + 8 + 10)/5 = 7.2, CoCrFeNi 8.25, NbMoTaW 5.5.
test('an atom has 12 neighbours from 7.5 valence electrons on, as in fcc, and 8 below, as in bcc', () => {
  const coordinationOf = (alloy: string) => pairAffinity(parseAlloy(alloy), facts)!.coordination;
  expect(['CoCrFeNi', 'AlCoCrFeNi', 'NbMoTaW'].map(coordinationOf)).toEqual([12, 8, 8]);
});
