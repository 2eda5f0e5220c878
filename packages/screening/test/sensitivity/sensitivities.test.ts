import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quantities, quantityById, screening, sensitivities, squareRoot, variance } from '../../src/index.ts';
import { pricedFacts, without } from '../fixtures/elements.ts';
import { random } from '../fixtures/random.ts';

const facts = pricedFacts();

describe.for(quantities.map(({ id }) => id))('the sensitivities of %s', (id) => {
  test('equal central differences with the rest in proportion', () => {
    const value = screening(facts, [id]);
    let compared = 0;
    fc.assert(
      fc.property(fc.integer(), (seed) => {
        const source = random(seed);
        const members = source.some(facts.symbols, source.whole(2, 6));
        const raw = members.map(() => source.whole(5, 40));
        const whole = raw.reduce((sum, one) => sum + one, 0);
        const shares = Object.fromEntries(members.map((symbol, at) => [symbol, raw[at]! / whole]));
        const here = value(shares)[id]!;
        fc.pre(here !== null);
        const found = sensitivities(id, shares, facts);
        for (const symbol of members) {
          const slope = (step: number) => {
            const moved = (by: number) =>
              value(
                Object.fromEntries(
                  members.map((other) => [
                    other,
                    other === symbol
                      ? shares[other]! + by
                      : shares[other]! * (1 - by / (1 - shares[symbol]!)),
                  ]),
                ),
              )[id]!;
            return (moved(step) - moved(-step)) / (2 * step);
          };
          const [coarse, fine] = [slope(2e-4), slope(1e-4)];
          const scale = Math.abs(fine) + Math.abs(here) + 1e-3;
          // A kink near by (Ω where ΔH changes sign) shows in the two differing.
          if (Math.abs(coarse - fine) > 1e-4 * scale) continue;
          compared++;
          expect(Math.abs(found[symbol]! - (4 * fine - coarse) / 3)).toBeLessThanOrEqual(1e-6 * scale);
        }
      }),
      { numRuns: 60 },
    );
    expect(compared).toBeGreaterThan(100);
  });
});

test('shares times sensitivities of a mean, weighted by what is left, add up to nothing', () => {
  // dQ/dcᵢ = (aᵢ − ā)/(1 − cᵢ) for a mean ā, so Σ cᵢ (1 − cᵢ) dQ/dcᵢ = 0.
  const shares = { Al: 0.1, Co: 0.2, Cr: 0.3, Ni: 0.4 };
  const found = sensitivities('meltingTemperature', shares, facts);
  const sum = Object.entries(shares).reduce(
    (all, [symbol, share]) => all + share * (1 - share) * found[symbol]!,
    0,
  );
  expect(Math.abs(sum)).toBeLessThan(1e-9);
});

test('a pure element has none', () => {
  expect(sensitivities('density', { Ni: 100 }, facts)).toEqual({ Ni: null });
});

test('there is none without a value', () => {
  expect(sensitivities('density', { Ni: 50, Cr: 50 }, without('density', 'Cr'))).toEqual({
    Cr: null,
    Ni: null,
  });
});

// Niobium, tantalum and vanadium have five valence electrons each: whatever their shares, their spread is 0.
test('a spread of equal values stays 0, and so does what is made of it', () => {
  const equal = { ...facts, columns: { ...facts.columns, metallicRadius: facts.symbols.map(() => 125) } };
  const none = { Nb: 0, Ta: 0, V: 0 };
  for (const id of ['sizeMismatch', 'mismatchEntropy', 'gamma', 'lambda']) {
    expect(sensitivities(id, { Nb: 50, Ta: 20, V: 30 }, equal), id).toEqual(none);
  }
  const spread = squareRoot(variance('valenceElectrons'));
  const own = { ...quantityById('density'), id: 'spread', formula: spread };
  expect(sensitivities(own, { Nb: 50, Ta: 20, V: 30 }, facts)).toEqual(none);
  expect(sensitivities(own, { Mo: 20, Ta: 50, V: 30 }, facts).Mo).toBeGreaterThan(0);
});

test('under a cap nothing changes', () => {
  expect(sensitivities('omega', { Fe: 50, Mn: 50 }, facts)).toEqual({ Fe: 0, Mn: 0 });
});
