import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bind, evaluator, type Program, quantities, quantityById } from '../../src/index.ts';
import { pricedFacts } from '../fixtures/elements.ts';
import { random } from '../fixtures/random.ts';

const facts = pricedFacts();
const at = (symbol: string) => facts.symbols.indexOf(symbol);

const programs = new Map<readonly string[], Program>();

function valuesAt(ids: readonly string[], members: number[], amounts: number[]): number[] {
  const formulas = () => ids.map((id) => quantityById(id).formula);
  const program = programs.get(ids) ?? bind(formulas(), facts);
  programs.set(ids, program);
  const into = new Float64Array(ids.length);
  const total = amounts.reduce((sum, part) => sum + part);
  evaluator(program).evaluate(members, amounts, total, into);
  return [...into];
}

describe('evaluation', () => {
  const exact = quantities
    .filter(({ formula }) =>
      bind([formula], facts).steps.every((step) => !('decimal' in step) || step.decimal),
    )
    .map(({ id }) => id);

  test('of one point on two grids gives the same digits where the data are short decimals', () => {
    expect(exact).toContain('sizeMismatch');
    expect(exact.length).toBeGreaterThanOrEqual(10);
    fc.assert(
      fc.property(fc.integer(), fc.constantFrom(2, 5, 7, 50), (seed, factor) => {
        const source = random(seed);
        const members = source.some([...facts.symbols.keys()], source.whole(1, 6));
        const amounts = members.map(() => source.whole(1, 4));
        const finer = amounts.map((part) => part * factor);
        expect(valuesAt(exact, members, finer)).toEqual(valuesAt(exact, members, amounts));
      }),
      { numRuns: 200 },
    );
  });

  test('puts a point that lies on a limit exactly on it', () => {
    const elements = ['Co', 'Cr', 'Fe', 'Mn', 'Ni'].map(at);
    expect(valuesAt(['valenceElectronConcentration', 'mixingEnthalpy'], elements, [4, 4, 4, 4, 4])).toEqual([
      8, -4.16,
    ]);
    // 3·3 + 4·6 + 6·8 + 7·10 electrons in 20 parts.
    expect(
      valuesAt(['valenceElectronConcentration'], ['Al', 'Cr', 'Fe', 'Ni'].map(at), [3, 4, 6, 7])[0],
    ).toBe(151 / 20);
  });

  test('ties permuted shares digit for digit', () => {
    const elements = ['Co', 'Cr', 'Fe', 'Ni'].map(at);
    const [first] = valuesAt(['configurationalEntropy'], elements, [1, 3, 7, 9]);
    for (const amounts of [
      [9, 7, 3, 1],
      [7, 1, 9, 3],
      [3, 9, 1, 7],
    ]) {
      expect(valuesAt(['configurationalEntropy'], elements, amounts)[0]).toBe(first);
    }
  });

  test('finds enthalpies that cancel to be exactly 0, and Ω at its cap', () => {
    // H of Cu–Ni 4, Cu–Mn 4, Mn–Ni −8 kJ/mol (Takeuchi & Inoue 2005).
    // Cu 2, Mn 1, Ni 1 parts: 4·2·1 + 4·2·1 − 8·1·1 = 8; Cu 1, Mn 1, Ni 1: 4 + 4 − 8 = 0.
    const elements = ['Cu', 'Mn', 'Ni'].map(at);
    expect(valuesAt(['mixingEnthalpy'], elements, [2, 1, 1])).toEqual([(4 * 8) / 16]);
    for (const part of [1, 3, 7]) {
      expect(valuesAt(['mixingEnthalpy', 'omega'], elements, [part, part, part])).toEqual([0, 1000]);
    }
  });

  test('remembers nothing of the composition before', () => {
    const program = bind(
      quantities.map(({ formula }) => formula),
      facts,
    );
    const once = evaluator(program);
    const [first, second] = [new Float64Array(quantities.length), new Float64Array(quantities.length)];
    once.evaluate([at('Ni')], [1], 1, first);
    once.evaluate([at('Al'), at('Ti')], [1, 3], 4, second);
    once.evaluate([at('Ni')], [1], 1, second);
    expect(second).toEqual(first);
  });

  test('shows the value of every step', () => {
    const program = bind([quantityById('density').formula], facts);
    const { evaluate, values } = evaluator(program);
    evaluate([at('Ni')], [1], 1, new Float64Array(1));
    expect(values[0]).toBe(58.6934);
    expect(values).toHaveLength(program.steps.length);
  });
});
