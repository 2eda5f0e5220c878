import type { Facts } from '@tiegel/contract';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quantities, screening, valuesOf } from '../src/index.ts';
import { pricedFacts } from './fixtures/elements.ts';
import { type Random, random } from './fixtures/random.ts';

const facts = pricedFacts();
const screen = screening(facts);
const ids = quantities.map(({ id }) => id);

const MISMATCHES: readonly (readonly [id: string, column: string])[] = [
  ['sizeMismatch', 'metallicRadius'],
  ['mismatchEntropy', 'metallicRadius'],
  ['electronegativitySpread', 'paulingElectronegativity'],
  ['allenElectronegativitySpread', 'allenElectronegativity'],
  ['modulusMismatch', 'shearModulus'],
];
const MADE_OF_ENTROPY = [
  'configurationalEntropy',
  'effectiveElements',
  'mixingFreeEnergy',
  'omega',
  'lambda',
  'excessEntropyRatio',
];
/** Elements that formulas count by name: a twin of another name is no twin to them. */
const NAMED = ['Al', 'B', 'C', 'Cr', 'Si'];
/** Two twins are one more pair, without enthalpy. */
const COUNTING_PAIRS = [
  'lowestPairEnthalpy',
  'highestPairEnthalpy',
  'pairEnthalpyScatter',
  'singlePhaseEstimate',
];

function someAlloy(source: Random): Record<string, number> {
  const members = source.some(facts.symbols, source.whole(2, 6));
  return Object.fromEntries(members.map((symbol) => [symbol, source.whole(1, 20)]));
}

/** The facts with one more element, `Xx`, in all like the one named and without enthalpy with it. */
function withTwin(of: string): Facts {
  const at = facts.symbols.indexOf(of);
  const rows = facts.pairs.mixingEnthalpy!.map((row) => [...row, row[at]!]);
  return {
    symbols: [...facts.symbols, 'Xx'],
    columns: Object.fromEntries(
      Object.entries(facts.columns).map(([id, values]) => [id, [...values, values[at]!]]),
    ),
    pairs: { mixingEnthalpy: [...rows, [...facts.pairs.mixingEnthalpy![at]!, 0]] },
  };
}

function withColumn(column: string, value: number): Facts {
  return { ...facts, columns: { ...facts.columns, [column]: facts.symbols.map(() => value) } };
}

function expectNear(found: number | null | undefined, expected: number | null | undefined): void {
  if (expected === null || expected === undefined) expect(found).toBeNull();
  else expect(Math.abs(found! - expected)).toBeLessThanOrEqual(1e-10 * Math.max(1, Math.abs(expected)));
}

describe('for every quantity', () => {
  test('the order in which elements are written changes no digit', () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const alloy = someAlloy(random(seed));
        const reversed = Object.fromEntries(Object.entries(alloy).reverse());
        expect(screen(reversed)).toEqual(screen(alloy));
      }),
    );
  });

  test('n equal shares have R ln n and count as n elements', () => {
    for (let n = 1; n <= 10; n++) {
      const alloy = Object.fromEntries(facts.symbols.slice(0, n).map((symbol) => [symbol, 1]));
      expect(screen(alloy).configurationalEntropy).toBeCloseTo(8.314462618 * Math.log(n), 12);
      expect(screen(alloy).effectiveElements).toBeCloseTo(n, 12);
    }
  });

  test('a single element has its own value of each mean, and no mismatch, enthalpy or entropy', () => {
    for (const symbol of facts.symbols) {
      const values = screen({ [symbol]: 100 });
      for (const { id, formula } of quantities) {
        if (formula.kind !== 'linear' || formula.of.kind !== 'column') continue;
        expect(values[id]).toBe(facts.columns[formula.of.column]![facts.symbols.indexOf(symbol)]);
      }
      const none = [
        ...MISMATCHES.map(([id]) => id),
        'mixingEnthalpy',
        'mixingFreeEnergy',
        'configurationalEntropy',
      ];
      for (const id of none) {
        expect(values[id] ?? 0).toBe(0);
      }
    }
  });

  test('an element split into two twins changes the entropy, what is made of it and what counts pairs, nothing else', () => {
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const source = random(seed);
        const alloy = someAlloy(source);
        const split = source.pick(Object.keys(alloy));
        fc.pre(!NAMED.includes(split));
        const share = source.fraction();
        const twins = { ...alloy, [split]: alloy[split]! * share, Xx: alloy[split]! * (1 - share) };
        const [before, after] = [screen(alloy), valuesOf(twins, withTwin(split))];
        for (const id of ids) {
          if (!MADE_OF_ENTROPY.includes(id) && !COUNTING_PAIRS.includes(id))
            expectNear(after[id], before[id]);
        }
        expect(after.configurationalEntropy).toBeGreaterThan(before.configurationalEntropy!);
      }),
    );
  });

  test('equal properties leave no mismatch, exactly', () => {
    for (const [id, column] of MISMATCHES) {
      expect(valuesOf({ Al: 17, Co: 23, Ni: 60 }, withColumn(column, 1.37), [id])[id]).toBe(0);
    }
  });

  test('what an indifferent element dilutes keeps the square of its share of enthalpy', () => {
    // ΔH is homogeneous of degree 2 in the amounts of what interacts.
    const symbols = [...facts.symbols, 'Xx'];
    const rows = facts.pairs.mixingEnthalpy!.map((row) => [...row, 0]);
    const diluting: Facts = { ...facts, symbols, pairs: { mixingEnthalpy: [...rows, symbols.map(() => 0)] } };
    fc.assert(
      fc.property(fc.integer(), fc.double({ min: 0.05, max: 0.95, noNaN: true }), (seed, share) => {
        const alloy = someAlloy(random(seed));
        const whole = Object.values(alloy).reduce((sum, one) => sum + one, 0);
        const diluted = { ...alloy, Xx: (whole * (1 - share)) / share };
        const { mixingEnthalpy } = valuesOf(diluted, diluting, ['mixingEnthalpy']);
        expectNear(mixingEnthalpy, screen(alloy).mixingEnthalpy! * share ** 2);
      }),
    );
  });
});
