import type { RankEntry } from '@tiegel/contract';
import { factsFor } from '@tiegel/elements';
import { bind, evaluator, quantityById, valueFor } from '@tiegel/screening';
import { expect, test } from 'vitest';
import { scoreExpression } from '../../src/prepared/scoreExpression.ts';

/** The score of an equimolar alloy. */
function scoreOf(rank: RankEntry[], symbols: string[]): number {
  const facts = factsFor(symbols);
  const score = new Float64Array(1);
  const { evaluate } = evaluator(bind([scoreExpression(rank, quantityById)], facts));
  evaluate(
    facts.symbols.map((_, at) => at),
    facts.symbols.map(() => 1),
    symbols.length,
    score,
  );
  return score[0]!;
}

const alloy = ['Co', 'Cr', 'Fe', 'Mn', 'Ni'];
const density = valueFor('density', 'CoCrFeMnNi')!;
const vec = valueFor('valenceElectronConcentration', 'CoCrFeMnNi')!; // 8

test('one entry is scored by its value, or by its distance to the target', () => {
  expect(scoreOf([{ quantity: 'density', prefer: 'high' }], alloy)).toBe(density);
  expect(scoreOf([{ quantity: 'density', prefer: 'low' }], alloy)).toBe(density);
  expect(scoreOf([{ quantity: 'density', prefer: { target: 9 } }], alloy)).toBe(Math.abs(density - 9));
});

// Derringer & Suich, J. Qual. Technol. 12 (1980) 214, written out by hand: weighted geometric mean
// of ((y − from)/(to − from))^shape for high, mirrored for low, 1 − |y − target|/within for a target.
test('several entries are combined by desirability', () => {
  const rank: RankEntry[] = [
    { quantity: 'density', prefer: 'low', from: 7, to: 9, weight: 2, shape: 3 },
    { quantity: 'valenceElectronConcentration', prefer: 'high', from: 6, to: 10 },
    { quantity: 'valenceElectronConcentration', prefer: { target: 7 }, within: 4, weight: 0.5 },
  ];
  const desirabilities: [number, number][] = [
    [((9 - density) / 2) ** 3, 2],
    [(vec - 6) / 4, 1],
    [1 - 1 / 4, 0.5],
  ];
  const expected = Math.exp(desirabilities.reduce((sum, [d, weight]) => sum + weight * Math.log(d), 0) / 3.5);
  expect(scoreOf(rank, alloy)).toBeCloseTo(expected, 12);
});

test('desirability is held between 0 and 1', () => {
  const other: RankEntry = { quantity: 'valenceElectronConcentration', prefer: 'high', from: 4, to: 6 };
  const beside = (entry: RankEntry) => scoreOf([entry, other], alloy);
  expect(beside({ quantity: 'density', prefer: 'high', from: 1, to: 2 })).toBe(1);
  expect(beside({ quantity: 'density', prefer: 'low', from: 1, to: 2 })).toBe(0);
  expect(beside({ quantity: 'density', prefer: { target: 20 }, within: 1 })).toBe(0);
});

test('an entry without a value leaves no score, even where the other is 0', () => {
  const rank: RankEntry[] = [
    { quantity: 'omega', prefer: 'high', from: 1, to: 10 }, // none for a pure element
    { quantity: 'density', prefer: 'low', from: 1, to: 2 },
  ];
  expect(scoreOf(rank, ['Ni'])).toBeNaN();
});

test('a ranking without an entry is a mistake of the caller', () => {
  expect(() => scoreExpression([], quantityById)).toThrow(RangeError);
});
