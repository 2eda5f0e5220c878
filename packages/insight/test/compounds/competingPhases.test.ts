import { parseAlloy } from '@tiegel/elements';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { compoundsAmong } from '../../src/compounds/binaryCompounds.ts';
import { competingPhases } from '../../src/index.ts';
import { alloys, facts, turned, withValues } from '../fixtures/alloys.ts';
import { type AnotherSolver, anotherSolver } from '../fixtures/anotherSolver.ts';

const of = (alloy: string) => competingPhases(parseAlloy(alloy), facts)!;
const common = ['Al', 'Co', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Nb', 'Ni', 'Si', 'Ti', 'V', 'Zr'];

let solver: AnotherSolver;
beforeAll(async () => {
  solver = await anotherSolver();
});

/** The same programme by another solver: minimise over all compounds and elements, every balance an equation. */
function lowestByAnotherSolver(alloy: Record<string, number>): number {
  const symbols = Object.keys(alloy);
  const total = Object.values(alloy).reduce((sum, amount) => sum + amount, 0);
  const compounds = compoundsAmong([...symbols].sort(), facts)!;
  const terms = compounds.map(
    ({ enthalpy }, at) => `${enthalpy < 0 ? '-' : '+'} ${Math.abs(enthalpy)} k${at}`,
  );
  const balances = symbols.map((symbol) => {
    const parts = compounds.flatMap(({ elements, fractions }, at) => {
      const place = elements.indexOf(symbol);
      return place < 0 ? [] : [`+ ${fractions[place]} k${at}`];
    });
    return ` ${parts.join(' ')} + e${symbol} = ${alloy[symbol]! / total}`;
  });
  const text = `Minimize\n ${terms.join(' ')}\nSubject To\n${balances.join('\n')}\nEnd`;
  return solver.solve(text, { primal_feasibility_tolerance: 1e-10, dual_feasibility_tolerance: 1e-10 })
    .ObjectiveValue;
}

test('another solver finds the same lowest enthalpy', () => {
  fc.assert(
    fc.property(alloys(common, { least: 2, most: 7 }), (alloy) => {
      expect(Math.abs(competingPhases(alloy, facts)!.enthalpy - lowestByAnotherSolver(alloy))).toBeLessThan(
        1e-7,
      );
    }),
    { numRuns: 150 },
  );
});

test('equal shares, where many sets are equally near, are solved too', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.constantFrom(...common), { minLength: 2, maxLength: 10 }), (symbols) => {
      const alloy = Object.fromEntries(symbols.map((symbol) => [symbol, 1]));
      expect(Math.abs(competingPhases(alloy, facts)!.enthalpy - lowestByAnotherSolver(alloy))).toBeLessThan(
        1e-7,
      );
    }),
    { numRuns: 60 },
  );
});

describe('a compound at its own composition', () => {
  test.each(['AlNi', 'Al3Ni', 'AlNi3', 'CTi', 'AlTi', 'Mo5Si5'])(
    '%s competes alone, 0 above the hull',
    (formula) => {
      const parsed = parseAlloy(formula);
      const own = compoundsAmong(Object.keys(parsed), facts)!.find(
        ({ fractions }) => Math.abs(fractions[0] - Object.values(parsed)[0]! / 100) < 1e-12,
      )!;
      const { enthalpy, phases } = of(formula);
      expect(phases).toHaveLength(1);
      expect(phases[0]!.formula).toBe(own.formula);
      expect(phases[0]!.fraction).toBeCloseTo(1, 12);
      expect(own.enthalpy - enthalpy).toBeCloseTo(0, 10);
    },
  );
});

test('no compound lies below the hull', () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.constantFrom(...common), { minLength: 2, maxLength: 2 }), (pair) => {
      for (const { elements, fractions, enthalpy } of compoundsAmong([...pair].sort(), facts)!) {
        const alloy = { [elements[0]]: fractions[0], [elements[1]]: fractions[1] };
        expect(enthalpy - competingPhases(alloy, facts)!.enthalpy).toBeGreaterThanOrEqual(-1e-10);
      }
    }),
  );
});

test('the set has the composition of the alloy, and its enthalpy is the sum over its phases', () => {
  fc.assert(
    fc.property(alloys(common), (alloy) => {
      const { phases, enthalpy } = competingPhases(alloy, facts)!;
      const compounds = compoundsAmong(Object.keys(alloy).sort(), facts)!;
      const total = Object.values(alloy).reduce((sum, amount) => sum + amount, 0);
      const found: Record<string, number> = {};
      let energy = 0;
      for (const { formula, fraction } of phases) {
        const compound = compounds.find((one) => one.formula === formula);
        energy += fraction * (compound?.enthalpy ?? 0);
        (compound?.elements ?? [formula]).forEach((symbol, at) => {
          found[symbol] = (found[symbol] ?? 0) + fraction * (compound?.fractions[at] ?? 1);
        });
      }
      for (const [symbol, amount] of Object.entries(alloy)) {
        expect(Math.abs((found[symbol] ?? 0) - amount / total)).toBeLessThan(1e-8);
      }
      expect(energy).toBeCloseTo(enthalpy, 8);
      expect(phases.reduce((sum, { fraction }) => sum + fraction, 0)).toBeCloseTo(1, 8);
    }),
  );
});

test('mixing two alloys never gives more than the two apart', () => {
  fc.assert(
    fc.property(alloys(common), alloys(common), (one, other) => {
      const [first, second] = [one, other].map((alloy) => {
        const total = Object.values(alloy).reduce((sum, amount) => sum + amount, 0);
        return Object.fromEntries(Object.entries(alloy).map(([symbol, amount]) => [symbol, amount / total]));
      }) as [Record<string, number>, Record<string, number>];
      const both = { ...first };
      for (const [symbol, share] of Object.entries(second)) both[symbol] = (both[symbol] ?? 0) + share;
      const apart = (competingPhases(one, facts)!.enthalpy + competingPhases(other, facts)!.enthalpy) / 2;
      expect(competingPhases(both, facts)!.enthalpy).toBeLessThanOrEqual(apart + 1e-8);
    }),
  );
});

test('elements that repel stay apart, and a pure element is alone', () => {
  expect(of('CuFe')).toEqual({
    enthalpy: 0,
    phases: [
      { formula: 'Cu', fraction: 0.5 },
      { formula: 'Fe', fraction: 0.5 },
    ],
  });
  expect(of('Ni')).toEqual({ enthalpy: 0, phases: [{ formula: 'Ni', fraction: 1 }] });
});

test('the order of writing changes nothing', () => {
  fc.assert(
    fc.property(alloys(common), (alloy) => {
      expect(competingPhases(turned(alloy), facts)).toEqual(competingPhases(alloy, facts));
    }),
  );
});

test('a parameter that lacks leaves no answer', () => {
  expect(competingPhases(parseAlloy('AlNi'), withValues('miedemaSurface', { Ni: null }))).toBeNull();
});
