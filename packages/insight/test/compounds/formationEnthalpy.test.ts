import { elements, pairRecords, sourcedValue } from '@tiegel/elements';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formationEnthalpy, type MiedemaParameters, miedemaParameters } from '../../src/index.ts';
import { facts } from '../fixtures/alloys.ts';

const of = (symbol: string): MiedemaParameters => miedemaParameters(symbol, facts)!;
const isTransition = (symbol: string) => sourcedValue(symbol, 'miedemaClass').value === 'transition';

// Worked by another program of the project's makers from the same parameters; digits as printed.
test.each([
  ['Ni', 'Al', 'compound', -48.3],
  ['Ti', 'C', 'compound', -77.0],
  ['Ni', 'Al', 'liquid', -22.6],
] as const)('%s%s as a %s has %d kJ/mol', (a, b, state, enthalpy) => {
  expect(Math.abs(formationEnthalpy(of(a), of(b), 0.5, state) - enthalpy)).toBeLessThanOrEqual(0.05);
});

// Takeuchi & Inoue, Mater. Trans. 46 (2005) 2817, computed their table by the liquid form.
test('the liquid form gives the published table within 1 kJ/mol for most pairs', () => {
  const counts = { transition: { near: 0, all: 0 }, others: { near: 0, all: 0 } };
  for (const { a, b, mixingEnthalpy } of pairRecords()) {
    const kind = isTransition(a) && isTransition(b) ? counts.transition : counts.others;
    kind.all += 1;
    if (Math.abs(formationEnthalpy(of(a), of(b), 0.5, 'liquid') - mixingEnthalpy) <= 1) kind.near += 1;
  }
  expect(counts.transition).toEqual({ near: 667, all: 703 });
  expect(counts.others).toEqual({ near: 589, all: 837 });
});

// The table of mixing enthalpies and the formula differ by H_trans/2 for Si and Ge, nearly always.
test('most of the other pairs that differ are of silicon and germanium', () => {
  const far = pairRecords().filter(
    ({ a, b, mixingEnthalpy }) =>
      !(isTransition(a) && isTransition(b)) &&
      Math.abs(formationEnthalpy(of(a), of(b), 0.5, 'liquid') - mixingEnthalpy) > 1,
  );
  const metalloids = far.filter(({ a, b }) => [a, b].some((symbol) => symbol === 'Si' || symbol === 'Ge'));
  expect(metalloids.length / far.length).toBeGreaterThan(0.4);
});

/**
 * Values printed in the tests of matminer (commit 8ddb18c), eV per atom, ordered compounds. They
 * differ from ours for three reasons, which are taken back here: unrounded cube roots of the
 * electron densities and powers of the molar volumes, printed in its Miedema.csv; one step of the
 * volumes where we take two; and, it seems, P = 14.1 instead of 14.2 for two transition metals.
 */
describe('values of another program', () => {
  const KILOJOULE_PER_ELECTRONVOLT = 96.4853;
  const unrounded = (symbol: string, density: number, volume: number): MiedemaParameters => ({
    ...of(symbol),
    electronDensity: Math.cbrt(density),
    surface: volume ** (2 / 3),
  });

  test('TiZr', () => {
    const [titanium, zirconium] = [unrounded('Ti', 3.51, 10.58), unrounded('Zr', 2.8, 14)];
    const enthalpy = formationEnthalpy(titanium, zirconium, 0.5, 'compound', 1) / KILOJOULE_PER_ELECTRONVOLT;
    expect(Math.abs((enthalpy * 14.1) / 14.2 - -0.003445)).toBeLessThan(0.000001);
  });

  test('Mg10Cu50Ca40, the sum over its pairs', () => {
    const parts = [
      { element: unrounded('Mg', 1.6, 14), share: 0.1 },
      { element: unrounded('Cu', 3.18, 7.12), share: 0.5 },
      { element: unrounded('Ca', 0.75, 26.2), share: 0.4 },
    ];
    const sum = (steps?: number) => {
      let total = 0;
      for (const [at, one] of parts.entries()) {
        for (const other of parts.slice(0, at)) {
          const both = one.share + other.share;
          total += both * formationEnthalpy(one.element, other.element, one.share / both, 'compound', steps);
        }
      }
      return total / KILOJOULE_PER_ELECTRONVOLT;
    };
    expect(Math.abs(sum(1) - -0.235126)).toBeLessThan(0.000005);
    expect(Math.abs(sum() / sum(1) - 1)).toBeLessThan(0.01);
  });

  // −(Δφ)² and 9.4 (Δn)² nearly cancel here, so the third decimal of n decides a fifth of the value.
  test('TiZr from parameters of three decimals is 18 % smaller', () => {
    const enthalpy = formationEnthalpy(of('Ti'), of('Zr'), 0.5, 'compound') / KILOJOULE_PER_ELECTRONVOLT;
    expect(enthalpy).toBeCloseTo(-0.002833, 6);
  });
});

const anyElement = fc.constantFrom(...elements.map(({ symbol }) => symbol));
const anyShare = fc.double({ min: 0.01, max: 0.99, noNaN: true });
const anyState = fc.constantFrom('liquid' as const, 'compound' as const);

test('which element is named first is irrelevant', () => {
  fc.assert(
    fc.property(anyElement, anyElement, anyShare, anyState, (a, b, share, state) => {
      const one = formationEnthalpy(of(a), of(b), share, state);
      const other = formationEnthalpy(of(b), of(a), 1 - share, state);
      expect(Math.abs(one - other)).toBeLessThan(1e-9 * Math.max(1, Math.abs(one)));
    }),
  );
});

test('an element with itself has nothing but its transformation', () => {
  fc.assert(
    fc.property(anyElement, anyShare, (symbol, share) => {
      expect(Math.abs(formationEnthalpy(of(symbol), of(symbol), share, 'liquid'))).toBe(0);
      expect(formationEnthalpy(of(symbol), of(symbol), share, 'compound')).toBeCloseTo(
        of(symbol).transformation,
        10,
      );
    }),
  );
});

test('further steps of the volumes hardly matter between metals', () => {
  const metals = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Hf', 'Mn', 'Mo', 'Nb', 'Ni', 'Ta', 'Ti', 'V', 'W', 'Zr'];
  for (const a of metals) {
    for (const b of metals) {
      const [two, many] = [2, 50].map((steps) => formationEnthalpy(of(a), of(b), 0.5, 'compound', steps));
      expect(Math.abs(two! - many!), `${a}${b}`).toBeLessThan(0.02);
    }
  }
});

test('towards either pure element the liquid has nothing', () => {
  for (const share of [1e-9, 1 - 1e-9]) {
    expect(Math.abs(formationEnthalpy(of('Al'), of('Ni'), share, 'liquid'))).toBeLessThan(1e-6);
  }
});
