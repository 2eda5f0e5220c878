import { describe, expect, test } from 'vitest';
import {
  below,
  bind,
  choose,
  column,
  condition,
  constant,
  divide,
  type Expression,
  elementProduct,
  elementQuotient,
  lesser,
  linear,
  minus,
  pairColumn,
  pairProduct,
  pairs,
  plus,
  quantities,
  squareRoot,
  times,
  variance,
  within,
} from '../../src/index.ts';
import { factsWith, pricedFacts } from '../fixtures/elements.ts';

const bound = (...formulas: Expression[]) => bind(formulas, factsWith());

describe('binding', () => {
  test('makes equal parts of formulas one step', () => {
    const { steps, outputs } = bound(
      variance('metallicRadius'),
      squareRoot(variance('metallicRadius')),
      variance('metallicRadius'),
    );
    expect(steps.map(({ kind }) => kind)).toEqual(['pairs', 'squareRoot']);
    expect(outputs).toEqual([0, 1, 0]);
  });

  test('puts every step behind those that it uses', () => {
    const { steps } = bind(
      quantities.map(({ formula }) => formula),
      pricedFacts(),
    );
    steps.forEach((step, number) => {
      const used = Object.entries(step).filter(([key]) =>
        ['left', 'right', 'of', 'then', 'otherwise'].includes(key),
      );
      for (const [, earlier] of used) expect(earlier ?? -1).toBeLessThan(number);
    });
  });

  test('does arithmetic on fixed numbers, conditions among them', () => {
    const { steps } = bound(times(plus(2, 3), divide(condition('annealTemperature'), 2)));
    expect(steps).toEqual([{ kind: 'constant', value: (5 * 1273.15) / 2 }]);
  });

  test('keeps of a choice between fixed numbers the side that holds', () => {
    const [hot, cold] = [linear('density'), linear('meltingTemperature')];
    expect(bound(choose(below(condition('serviceTemperature'), 300), cold, hot))).toEqual(bound(cold));
    expect(bound(choose(below(300, condition('serviceTemperature')), cold, hot))).toEqual(bound(hot));
    expect(bound(within(below(300, condition('serviceTemperature')), hot)).steps).toEqual([
      { kind: 'constant', value: Number.NaN },
    ]);
  });

  test('takes sums of short decimals as whole numbers over a power of ten', () => {
    const [radius, enthalpy, products] = bound(
      variance('metallicRadius'),
      pairs(pairProduct(constant(4), pairColumn('mixingEnthalpy'))),
      linear(elementProduct(column('metallicRadius'), column('valenceElectrons'))),
    ).steps;
    expect(radius).toMatchObject({ kind: 'pairs', decimal: true, divisor: 10_000 });
    // Pairs with germanium end in .5 kJ/mol: four times that is whole.
    expect(enthalpy).toMatchObject({ kind: 'pairs', decimal: true, divisor: 1 });
    expect(products).toMatchObject({ kind: 'linear', decimal: true, divisor: 100 });
  });

  test('leaves quotients, and decimals too long to add exactly, as they are', () => {
    const [volume, masses] = bound(
      linear(elementQuotient(column('atomicMass'), column('density'))),
      variance('atomicMass'),
    ).steps;
    expect(volume).toMatchObject({ decimal: false, divisor: 1 });
    expect(masses).toMatchObject({ decimal: false, divisor: 1 });
  });

  test('makes a column that the facts lack missing for every element', () => {
    const [step] = bound(linear('price')).steps;
    expect(step?.kind === 'linear' && step.coefficients.every(Number.isNaN)).toBe(true);
  });

  test('gives pairs of an element with itself nothing', () => {
    const facts = factsWith();
    const [step] = bind([pairs(constant(1))], facts).steps;
    const size = facts.symbols.length;
    expect(
      step?.kind === 'pairs' && facts.symbols.every((_, at) => step.coefficients[at * size + at] === 0),
    ).toBe(true);
  });

  test('tells a cap from the same number elsewhere by nothing: equal constants are one', () => {
    expect(
      bound(minus(lesser(7, linear('density')), 7)).steps.filter(({ kind }) => kind === 'constant'),
    ).toHaveLength(1);
  });
});
