import type { Facts } from '@tiegel/contract';
import { parseAlloy } from '@tiegel/elements';
import { publishedAlloys } from '@tiegel/elements/publishedAlloys';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demixing, ordering, orderingTrust } from '../../src/index.ts';
import { soCold } from '../../src/regularSolution/soCold.ts';
import { alloys, facts, turned, withoutPair, withValues } from '../fixtures/alloys.ts';
import { areaUnderCurve } from '../fixtures/areaUnderCurve.ts';

const of = (alloy: string) => ordering(parseAlloy(alloy), facts)!;

/** The facts of a world in which every pair that attracts repels, and the other way round. */
const mirrored: Facts = {
  ...facts,
  pairs: {
    mixingEnthalpy: facts.pairs.mixingEnthalpy!.map((row) =>
      row.map((value) => (value === null ? null : -value)),
    ),
  },
};

test('ordering is demixing with the enthalpies turned', () => {
  fc.assert(
    fc.property(alloys(), (alloy) => {
      const [order, separation] = [ordering(alloy, facts)!, demixing(alloy, mirrored)!];
      expect(order.temperature).toBe(separation.temperature);
      expect(order.mode).toEqual(separation.mode);
    }),
  );
});

// Bragg–Williams: T = −2 Ω c(1 − c)/R with Ω = 4 · −22 kJ/mol.
test('equimolar AlNi orders at the Bragg–Williams temperature', () => {
  expect(of('AlNi').temperature).toBeCloseTo((2 * 88_000 * 0.25) / 8.314462618, 8);
  expect(of('AlNi').sublattices).toEqual([['Al'], ['Ni']]);
});

// That aluminium and the late transition metals share the sublattices of B2 in AlCoCrFeNi is
// what its publications report (BCC+B2, with B2 rich in Al and Ni).
test('in AlCoCrFeNi aluminium takes one sublattice, nickel and cobalt the other', () => {
  const { sublattices, words, ratioToMelting } = of('AlCoCrFeNi');
  expect(sublattices[0]![0]).toBe('Al');
  expect(sublattices[1]!.slice(0, 2)).toEqual(['Ni', 'Co']);
  expect(ratioToMelting).toBeGreaterThan(1);
  expect(words).toMatch(/^It would be ordered up to its melting, were it bcc \(/);
});

// 2 · 4 kJ/mol · ¼ / R = 240.6 K by the closed form, 0.13 of the melting temperature; that CoFe orders near 1003 K is from memory.
test('an order of the deep cold is told as one that atoms hardly reach, and as one that magnetism may raise', () => {
  const { words, trust, temperature } = of('CoFe');
  expect(temperature).toBeCloseTo(2000 / 8.314462618, 6);
  expect(words).toMatch(/^Below 241 K, 0\.13 of .*, though atoms hardly move so cold\.$/);
  expect(trust).toContain('cobalt–iron comes out at 241 K and orders below some 1000 K');
  expect(of('AlCoCrFeNi').words).not.toContain('hardly move');
  // Below 0.3 of the melting temperature, not at it.
  expect([0.29, 0.3].map(soCold)).toEqual([', though atoms hardly move so cold', '']);
});

test('what never orders is said to', () => {
  expect(of('CuFe')).toMatchObject({ temperature: null, ratioToMelting: null, sublattices: [], mode: {} });
  expect(of('CuFe').words).toBe('The random solution would order at no temperature.');
});

test('without a melting temperature there is no ratio, and the sentence does without', () => {
  const found = ordering(parseAlloy('AlNi'), withValues('meltingTemperature', { Al: null }))!;
  expect(found.ratioToMelting).toBeNull();
  expect(found.words).toMatch(/^Below 5290 K it would order, were it bcc: /);
});

test('no element stands on both sublattices, and the order of writing changes nothing', () => {
  fc.assert(
    fc.property(alloys(), (alloy) => {
      const found = ordering(alloy, facts)!;
      const all = found.sublattices.flat();
      expect(new Set(all).size).toBe(all.length);
      expect(ordering(turned(alloy), facts)).toEqual(found);
    }),
  );
});

test('an unknown pair gives no answer', () => {
  expect(ordering(parseAlloy('AlNi'), withoutPair('Al', 'Ni'))).toBeNull();
});

test('it is a weak hint of more than one phase, as the text says', () => {
  const cases = publishedAlloys().flatMap(({ composition, singlePhase }) => {
    if (singlePhase === null) return [];
    const { temperature, ratioToMelting } = ordering(composition, facts)!;
    if (temperature !== null && ratioToMelting === null) return [];
    return [{ positive: singlePhase, score: ratioToMelting ?? 0 }];
  });
  expect(areaUnderCurve(cases)).toBeCloseTo(0.62, 2);
  expect(orderingTrust).toContain('AUC 0.62');
});
